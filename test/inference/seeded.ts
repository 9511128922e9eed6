/** Seeded random numbers for simulations: the same sequence on every machine. */
export interface Seeded {
  /** Evenly between 0 and 1. */
  readonly even: () => number;
  /** Standard normal. */
  readonly normal: () => number;
}

/** Mulberry32 (a 32-bit generator in the public domain) with Box–Muller normals. */
export function seeded(seed: number): Seeded {
  let state = seed >>> 0;
  const even = () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
  const normal = () => Math.sqrt(-2 * Math.log(1 - even())) * Math.cos(2 * Math.PI * even());
  return { even, normal };
}
