import { describe, expect, it } from 'vitest';
import { measuredStretch, rubberStretch } from '../../src/mechanics/bandTension.ts';
import { addedMass, type Chains, liftedLength, type Rig } from '../../src/mechanics/rig.ts';
import { chainKgPerMetre } from '../../src/tables/chainsAndBands.ts';
import { heavyChains } from './tryRigs.ts';

describe('what a chain adds', () => {
  it('1.50 m of 10 mm DIN 766 chain off the floor weigh 3.30 kg a side, 6.60 kg on the bar (2.2 kg/m × 1.50 m; the fit 0.022·10² gives the same)', () => {
    const chains: Chains = {
      kind: 'chains',
      kgPerMetre: chainKgPerMetre(0.01),
      length: 2,
      cord: 0,
    };
    expect(chains.kgPerMetre * liftedLength(chains, 1.5)).toBeCloseTo(3.3, 12);
    expect(addedMass([chains], 1.5)).toBeCloseTo(6.6, 12);
    expect(0.022 * 10 ** 2 * 1.5).toBeCloseTo(3.3, 12);
  });

  it('takes the table’s row where it has one and 0.022·d² between (9 mm: 1.782 kg/m, by hand), within 3 % of the rows from 6 to 20 mm', () => {
    expect(chainKgPerMetre(0.013)).toBe(3.8);
    expect(chainKgPerMetre(0.009)).toBeCloseTo(1.782, 12);
    for (const mm of [6, 7, 8, 10, 11, 13, 14, 16, 18, 20])
      expect(Math.abs((0.022 * mm ** 2) / chainKgPerMetre(mm / 1000) - 1)).toBeLessThan(0.03);
  });

  it('adds nothing while it lies on the floor, then its weight a metre, then all of it', () => {
    // 2 chains × 9 kg/m; cord 0.15 m, length 1.1 m: by hand 0, 18·0.35 = 6.3, 18·1.1 = 19.8 kg.
    expect(addedMass([heavyChains], 0.1)).toBe(0);
    expect(addedMass([heavyChains], 0.5)).toBeCloseTo(6.3, 12);
    expect(addedMass([heavyChains], 1.9)).toBeCloseTo(19.8, 12);
  });
});

describe('what bands pull', () => {
  const stretch = measuredStretch([
    { length: 0.9, tension: 100 },
    { length: 1.4, tension: 260 },
  ]);

  it('runs straight between measured lengths, on by the last slope, and down to slack (320 N/m: slack at 0.9 − 100/320 = 0.5875 m)', () => {
    expect(stretch.tensionAt(1.15)).toBeCloseTo(180, 12);
    expect(stretch.tensionAt(1.5)).toBeCloseTo(292, 12);
    expect(stretch.tensionAt(0.5875)).toBeCloseTo(0, 12);
    expect(stretch.tensionAt(0.3)).toBe(0);
    expect(stretch.known).toEqual([0.9, 1.4]);
    expect(stretch.longest).toBeCloseTo(1.54, 12);
  });

  it('a 22 × 4.5 mm loop of G = 0.5 MPa pulls 99 N · (λ − 1/λ²): 60.39, 104.5, 173.25 and 231.66 N at 1.25, 1.5, 2 and 2.5 times its length (0.5 MPa · 2 · 22 · 4.5 mm² = 99 N, by hand)', () => {
    const loop = { width: 0.022, thickness: 0.0045, rest: 1, strands: 2, count: 1 };
    const { tensionAt } = rubberStretch(loop, 0.5e6);
    for (const [length, newtons] of [
      [1.25, 60.39],
      [1.5, 104.5],
      [2, 173.25],
      [2.5, 231.66],
    ] as const)
      expect(tensionAt(length)).toBeCloseTo(newtons, 9);
    expect(tensionAt(0.8)).toBe(0);
  });

  it('from the floor they make the bar heavier, from the rack lighter, by T/g (180 N / 9.80665 = 18.355 kg)', () => {
    const at = (anchor: number): Rig => [{ kind: 'bands', anchor, stretch }];
    expect(addedMass(at(0), 1.15)).toBeCloseTo(18.355, 3);
    expect(addedMass(at(2.3), 1.15)).toBeCloseTo(-18.355, 3);
  });
});
