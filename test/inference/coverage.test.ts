import { describe, expect, it } from 'vitest';
import {
  fitStrengthCurve,
  fittedTorque,
  logErrorAt,
  type Tested,
} from '../../src/inference/fitStrengthCurve.ts';
import { normalDraw, seededRandom } from '../../src/numeric/random.ts';
import { meanTorque, ownTorque, residualAt } from '../../src/physiology/strengthCurve.ts';
import type { ActionName } from '../../src/tables/actions.ts';
import { strengthSpread } from '../../src/tables/strengthSpread.ts';
import { testErrors } from '../../src/tables/testError.ts';

/** Repeatable draws. */
interface Seeded {
  readonly even: () => number;
  readonly normal: () => number;
}

function seeded(seed: number): Seeded {
  const even = seededRandom(seed);
  return { even, normal: () => normalDraw(even) };
}

/** True torque at an angle, N·m. */
type Truth = (deg: number) => number;

const angles = [0, 10, 20, 30, 40, 50, 60, 70, 80, 90, 100, 110, 120];
const byPrior =
  (action: ActionName) =>
  ({ normal }: Seeded): Truth => {
    const { logScale, shiftDeg, tilt } = strengthSpread(action);
    const own = {
      scale: Math.exp(logScale * normal()),
      shiftDeg: shiftDeg * normal(),
      tilt: tilt * normal(),
      residual: residualAt(action, 0).map(normal),
    };
    return (deg) => ownTorque(action, 'male', 80, own, deg);
  };

/** Angles of one session: `count` of them, spread evenly with a few degrees of chance. */
function session(count: number, { even }: Seeded): number[] {
  const [first, last] = [25 + 15 * even(), 85 + 20 * even()];
  const step = count === 1 ? 0 : (last - first) / (count - 1);
  return Array.from({ length: count }, (_, i) => first + i * step + 4 * (even() - 0.5));
}

/** Share of athletes whose true torque lies inside the 90 % band, by angle. */
function coverage(
  action: ActionName,
  athletes: number,
  counts: readonly number[],
  truthOf: (random: Seeded) => Truth,
  seed: number,
) {
  const random = seeded(seed);
  const tested: Tested = {
    action,
    reference: 'male',
    bodyMass: 80,
    testError: testErrors['single-joint dynamometer'].value,
  };
  const hits = angles.map(() => 0);
  for (let k = 0; k < athletes; k++) {
    const truth = truthOf(random);
    const measured = session(counts[k % counts.length] ?? 4, random).map((deg) => ({
      deg,
      torque: truth(deg) * Math.exp(tested.testError * random.normal()),
    }));
    const curve = fitStrengthCurve(tested, measured);
    angles.forEach((deg, i) => {
      const off = Math.abs(Math.log(truth(deg) / fittedTorque(curve, deg)));
      // 1.644854: the middle 90 % of the normal distribution (tables).
      if (off <= 1.644854 * logErrorAt(curve, deg)) hits[i] = (hits[i] ?? 0) + 1;
    });
  }
  const by = hits.map((n) => n / athletes);
  return { by, overall: by.reduce((sum, share) => sum + share, 0) / by.length };
}

type Covered = ReturnType<typeof coverage>;

function printed(rows: readonly (readonly [what: string, covered: Covered])[]): string {
  const head = `${'inside the 90 % band, %'.padEnd(46)} | all | ${angles.map((deg) => `${deg}°`.padStart(4)).join(' ')}`;
  const lines = rows.map(([what, { by, overall }]) => {
    const whole = (share: number) => (100 * share).toFixed(0);
    return `${what.padEnd(46)} | ${whole(overall).padStart(3)} | ${by.map((share) => whole(share).padStart(4)).join(' ')}`;
  });
  return [head, ...lines].join('\n');
}

/** Size, peak angle and share of the peak at 20° of one athlete. */
function drawn({ normal }: Seeded) {
  return {
    peak: 240 * Math.exp(0.22 * normal()),
    at: 70 + 5 * normal(),
    near: 0.352 * Math.exp(0.12 * normal()),
  };
}

/**
 * Athletes of other families than the fit's, with the spread of Marginson and Eston 2001: 20° at
 * 35.2 ± 4.3 % of the peak (12 % of it), and the peak at 70 ± 5°, which makes 100° scatter by about
 * their 13.7 of 77.9 %.
 */
const others: readonly (readonly [what: string, truthOf: (random: Seeded) => Truth])[] = [
  [
    'a bell in the angle',
    (random) => {
      const { peak, at, near } = drawn(random);
      const width = (at - 20) / Math.sqrt(-2 * Math.log(near));
      return (deg) => peak * Math.exp(-(((deg - at) / width) ** 2) / 2);
    },
  ],
  [
    'a parabola in the angle, at least a fifth',
    (random) => {
      const { peak, at, near } = drawn(random);
      const width = (at - 20) / Math.sqrt(1 - near);
      return (deg) => peak * Math.max(1 - ((deg - at) / width) ** 2, 0.2);
    },
  ],
  [
    'the mean curve, every 10° off by 5 % on its own',
    ({ normal }) => {
      const scale = Math.exp(0.22 * normal());
      const off = Array.from({ length: 30 }, () => 0.05 * normal());
      return (deg) => {
        const place = (deg + 20) / 10;
        const [i, share] = [Math.floor(place), place - Math.floor(place)];
        const log = (1 - share) * (off[i] ?? 0) + share * (off[i + 1] ?? 0);
        return scale * Math.exp(log) * meanTorque('knee extension', 'male', 80, deg);
      };
    },
  ],
];

describe('the 90 % band of the fitted curve', () => {
  const own = byPrior('knee extension');
  it('holds the true torque of 87 to 93 % of 2,000 simulated athletes (definition of the band)', {
    timeout: 60_000,
  }, () => {
    const all = coverage('knee extension', 2000, [3, 4, 5, 6], own, 1);
    const few = coverage('knee extension', 500, [1, 2], own, 2);
    const flexion = coverage('knee flexion', 500, [3, 4, 5], byPrior('knee flexion'), 3);
    console.log(
      printed([
        ['knee extension, 3 to 6 tested angles, 2,000', all],
        ['knee extension, 1 or 2 tested angles, 500', few],
        ['knee flexion, 3 to 5 tested angles, 500', flexion],
      ]),
    );
    for (const { overall } of [all, few, flexion]) {
      expect(overall).toBeGreaterThan(0.87);
      expect(overall).toBeLessThan(0.93);
    }
    for (const share of all.by) expect(share).toBeGreaterThan(0.85);
  });

  it('is printed for athletes of another family of curves, for which nothing is promised', () => {
    const rows = others.map(
      ([what, truthOf]) =>
        [what, coverage('knee extension', 500, [3, 4, 5, 6], truthOf, 4)] as const,
    );
    console.log(printed(rows));
    expect(rows.every(([, { by }]) => by.every(Number.isFinite))).toBe(true);
  });
});
