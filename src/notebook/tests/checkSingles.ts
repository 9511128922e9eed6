import { toRadians } from '../../numeric/degrees.ts';
import { degreesText, isAbove, type Reading } from '../reading.ts';
import type { KnownLifts } from '../readLifts.ts';
import type { LiftTest, Test } from './strengthTest.ts';

/** Ends nearer than this are the same: as near as a coach reads an angle (working value). */
const same = toRadians(1);

/**
 * Holds tested singles of one lift against each other: refuses two that differ over one range, and
 * remarks on a longer range that is heavier than a shorter one inside it, which no body can do.
 */
export function checkSingles(reading: Reading, tests: readonly Test[], lifts: KnownLifts): void {
  const singles = tests.flatMap((test) => {
    const first = test.kind === 'lift' ? lifts.get(test.lift)?.rangeDeg[0] : undefined;
    return test.kind === 'lift' && first !== undefined
      ? [{ test, from: test.from ?? toRadians(first) }]
      : [];
  });
  for (const [index, one] of singles.entries())
    for (const other of singles.slice(0, index)) {
      if (one.test.lift !== other.test.lift || one.test.best === other.test.best) continue;
      const starts = other.from - one.from;
      const ends = one.test.to - other.test.to;
      if (Math.max(Math.abs(starts), Math.abs(ends)) < same) refuseTwo(reading, other, one);
      else if (Math.min(starts, ends) > -same) remarkOnLonger(reading, one, other);
      else if (Math.max(starts, ends) < same) remarkOnLonger(reading, other, one);
    }
}

interface Single {
  readonly test: LiftTest;
  readonly from: number;
}

function refuseTwo(reading: Reading, { test: first }: Single, { test, from }: Single): void {
  const message = `the ${test.lift} from ${span(from, test.to)} has two bests, ${kg(first)} and ${kg(test)}`;
  const hint = 'keep the newer one and delete the other';
  reading.refuse([...test.path, 'best'], { code: 'two-bests', message, hint });
}

function remarkOnLonger(reading: Reading, longer: Single, shorter: Single): void {
  if (!isAbove(longer.test.best, shorter.test.best)) return;
  const { test } = longer;
  const message = `the tested ${test.lift} of ${kg(test)} from ${span(longer.from, test.to)} is heavier than that of ${kg(shorter.test)} over the shorter range from ${span(shorter.from, shorter.test.to)} inside it`;
  const hint = 'check load, depth and date of both; the shorter range can be no lighter';
  reading.remark([...test.path, 'best'], { code: 'longer-is-heavier', message, hint });
}

const span = (from: number, to: number): string => `${degreesText(from)}° to ${degreesText(to)}°`;
const kg = ({ best }: LiftTest): string => `${Number(best.toFixed(1))} kg`;
