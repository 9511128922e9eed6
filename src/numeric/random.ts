/** Draws uniform numbers in 0..1; each call gives the next. */
export type Random = () => number;

/**
 * A repeatable stream of uniform numbers, for draws that must come out the same again.
 *
 * sfc32 of C. Doty-Humphrey (PractRand, public domain): three words of state and a counter, period
 * of at least 2³²; the first draws are thrown away so that near seeds part.
 *
 * @param seed any whole number; equal seeds give equal streams
 */
export function seededRandom(seed: number): Random {
  let [a, b, c, count] = [0x9e3779b9, 0x243f6a88, seed | 0, 1];
  const next = () => {
    const sum = (((a + b) | 0) + count) | 0;
    count = (count + 1) | 0;
    a = b ^ (b >>> 9);
    b = (c + (c << 3)) | 0;
    c = (((c << 21) | (c >>> 11)) + sum) | 0;
    return (sum >>> 0) / 2 ** 32;
  };
  for (let i = 0; i < 15; i++) next();
  return next;
}

/**
 * Draws of the standard normal distribution from uniform ones (Box and Muller 1958, one of the two
 * values of a pair, so that a draw leaves no state behind).
 */
export function normalDraw(random: Random): number {
  // 1 − u is never 0, so the logarithm is finite.
  return Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
}
