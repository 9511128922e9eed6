import { describe, expect, it } from 'vitest';
import type { ErrorCorrelation } from '../../src/inference/reliability/errorOfChange.ts';
import { borrowedError, type TestError } from '../../src/inference/retest/testError.ts';
import { retest } from '../../src/inference/retest.ts';
import { chiSquaredQuantile } from '../../src/numeric/chiSquared.ts';
import { toRadians } from '../../src/numeric/degrees.ts';
import { normalDraw, type Random, seededRandom } from '../../src/numeric/random.ts';
import { exactly, knownError, range } from './tested.ts';

/** Knee extension by angle before training, N·m (invented); the target holds the last two. */
const torques = [
  [40, 160],
  [80, 240],
  [100, 220],
] as const;

interface Simulated {
  readonly error: TestError;
  /** Standard deviation of a day's score, share: the truth, which a verdict may only guess. */
  readonly trueError: (random: Random) => number;
  readonly correlation: ErrorCorrelation;
  /** Correlation of errors of a day in truth. */
  readonly trueCorrelation: number;
  /** Gains of target and elsewhere, shares. */
  readonly gains: readonly [number, number];
  readonly days: number;
}

const plain: Simulated = {
  error: knownError(0.04),
  trueError: () => 0.04,
  correlation: exactly(0.4),
  trueCorrelation: 0.4,
  gains: [0, 0],
  days: 1,
};

/** How often each word falls over many drawn retests. */
function frequencies(simulated: Simulated, runs: number, seed: number) {
  const random = seededRandom(seed);
  const counts = { gained: 0, lost: 0, specific: 0, specificLoss: 0 };
  for (let run = 0; run < runs; run++) {
    const { target, contrast } = retest(drawn(simulated, random));
    if (target.says === 'yes') counts.gained++;
    if (target.says === 'loss') counts.lost++;
    if (contrast.says === 'yes') counts.specific++;
    if (contrast.says === 'loss') counts.specificLoss++;
  }
  const share = (count: number) => count / runs;
  return {
    gained: share(counts.gained),
    lost: share(counts.lost),
    specific: share(counts.specific),
    specificLoss: share(counts.specificLoss),
  };
}

function drawn(simulated: Simulated, random: Random) {
  const spread = simulated.trueError(random);
  const r = simulated.trueCorrelation;
  const day = (gains: readonly [number, number]) => {
    const shared = Math.sqrt(r) * normalDraw(random);
    const angles = torques.map(([deg, torque]) => {
      const noise = spread * (shared + Math.sqrt(1 - r) * normalDraw(random));
      const gain = deg >= 80 ? gains[0] : gains[1];
      return { angle: toRadians(deg), trials: [torque * (1 + gain) * Math.exp(noise)] };
    });
    return { score: 'best', angles } as const;
  };
  const days = (gains: readonly [number, number]) =>
    Array.from({ length: simulated.days }, () => day(gains));
  return {
    before: days([0, 0]),
    after: days(simulated.gains),
    target: range(80, 100),
    error: simulated.error,
    correlation: simulated.correlation,
  };
}

/** 2.5 % ± 0.3 on each side: 2.7 standard errors of 20,000 runs. */
const halfOfFive = (share: number) => {
  expect(share).toBeGreaterThan(0.022);
  expect(share).toBeLessThan(0.028);
};

const runs = 20_000;

describe('false verdicts when nothing changed (2.5 % a side by definition)', () => {
  it('with a known error and correlation', () => {
    const found = frequencies(plain, runs, 11);
    for (const share of Object.values(found)) halfOfFive(share);
  });

  it('with an own error of 6 degrees of freedom, estimated anew each time (t)', () => {
    // s² of 6 degrees: the mean of 6 squared normals.
    const random = seededRandom(5);
    const found = { gained: 0, specific: 0 };
    for (let run = 0; run < runs; run++) {
      const squares = Array.from({ length: 6 }, () => normalDraw(random) ** 2);
      const amount = 0.04 * Math.sqrt(squares.reduce((sum, x) => sum + x, 0) / 6);
      const error = { ...knownError(amount), degreesOfFreedom: 6 };
      const { target, contrast } = retest(drawn({ ...plain, error }, random));
      if (target.says === 'yes') found.gained++;
      if (contrast.says === 'yes') found.specific++;
    }
    halfOfFive(found.gained / runs);
    halfOfFive(found.specific / runs);
  });

  it('with a borrowed error, if true errors lie about it as its degrees say', () => {
    const error = borrowedError('single-joint dynamometer');
    const { amount, degreesOfFreedom } = error;
    // Inverse χ² in 400 equal steps: what the t quantile takes the true variance to be.
    const spreads = Array.from(
      { length: 400 },
      (_, i) =>
        amount *
        Math.sqrt(degreesOfFreedom / chiSquaredQuantile((i + 0.5) / 400, degreesOfFreedom)),
    );
    const trueError = (random: Random) => spreads[Math.floor(random() * 400)] ?? amount;
    const found = frequencies({ ...plain, error, trueError }, runs, 17);
    for (const share of Object.values(found)) halfOfFive(share);
  });

  it('with an unknown correlation never more, whatever it is in truth', () => {
    const correlation: ErrorCorrelation = { least: 0, most: 1, known: 'assumed' };
    for (const trueCorrelation of [0, 0.5, 0.95]) {
      const found = frequencies({ ...plain, correlation, trueCorrelation }, 4000, 23);
      // 2.5 % and three standard errors of 4000 runs.
      for (const share of Object.values(found)) expect(share).toBeLessThan(0.0324);
    }
  });
});

const designs: readonly (readonly [string, Partial<Simulated>])[] = [
  ['error 4 % known, 1 day', {}],
  ['error 4 % known, 2 days', { days: 2 }],
  ['error 4 % borrowed, 1 day', { error: borrowedError('single-joint dynamometer') }],
  ['error 4 % borrowed, 2 days', { error: borrowedError('single-joint dynamometer'), days: 2 }],
  ['error 7 % known, 1 day', { error: knownError(0.07), trueError: () => 0.07 }],
];
const sizes = [0.02, 0.05, 0.1, 0.15, 0.2];

describe('how often a true gain is seen', () => {
  it('prints the share of “yes” by size of gain (target; contrast if nothing changed elsewhere), rising with the gain', () => {
    const cell = (x: number) => `${Math.round(100 * x)} %`.padStart(6);
    const unknown: ErrorCorrelation = { least: 0, most: 1, known: 'assumed' };
    const rows = designs.map(([name, design]) => {
      const powers = sizes.map((gain) =>
        frequencies({ ...plain, correlation: unknown, ...design, gains: [gain, 0] }, 400, 31),
      );
      return { name, powers };
    });
    const line = (name: string, cells: readonly string[]) =>
      `${name.padEnd(36)} | ${cells.join(' | ')}`;
    console.log(
      [
        line('2 target angles, 1 other, r 0.4', sizes.map(cell)),
        ...rows.flatMap(({ name, powers }) => [
          line(
            `${name}: target`,
            powers.map(({ gained }) => cell(gained)),
          ),
          line(
            `${name}: contrast`,
            powers.map(({ specific }) => cell(specific)),
          ),
        ]),
      ].join('\n'),
    );
    for (const { powers } of rows)
      for (const [i, power] of powers.slice(1).entries()) {
        expect(power.gained).toBeGreaterThanOrEqual(powers[i]?.gained ?? 0);
        expect(power.specific).toBeGreaterThanOrEqual(powers[i]?.specific ?? 0);
      }
  });

  it('one angle, known error: the power of the normal formula Φ(ln(1 + g)/(e·√2) − 1.96) to 2 points', () => {
    // Hand calculation with the normal table: 10 % gain, error 4 %: Φ(1.685 − 1.960) = 0.392.
    const random = seededRandom(41);
    let seen = 0;
    for (let run = 0; run < 5000; run++) {
      const trial = (torque: number) => [
        {
          score: 'best',
          angles: [{ angle: 1.5, trials: [torque * Math.exp(0.04 * normalDraw(random))] }],
        } as const,
      ];
      const target = { from: 1.4, to: 1.6 };
      const result = retest({
        before: trial(200),
        after: trial(220),
        target,
        error: knownError(0.04),
      });
      if (result.target.says === 'yes') seen++;
    }
    expect(Math.abs(seen / 5000 - 0.392)).toBeLessThan(0.02);
  });
});
