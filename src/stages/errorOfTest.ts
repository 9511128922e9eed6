import {
  type EstimatedCorrelation,
  errorCorrelation,
} from '../inference/reliability/errorCorrelation.ts';
import { multiplier } from '../inference/reliability/multiplier.ts';
import { isRefusal } from '../inference/reliability/refusal.ts';
import { squadError } from '../inference/retest/squadError.ts';
import { scoresByAngle, type TestDay } from '../inference/retest/testDay.ts';
import {
  borrowedError,
  combinedError,
  errorFromRepeats,
  type TestError,
} from '../inference/retest/testError.ts';
import type { RepeatedTest, TorqueTest } from '../notebook/tests/strengthTest.ts';
import { toRadians } from '../numeric/degrees.ts';
import { type ActionName, actions } from '../tables/actions.ts';
import type { TestKind } from '../tables/testError.ts';

/** The error of an action's test, and how errors of one day's angles go together if that is known. */
export interface KnownError {
  readonly error: TestError;
  readonly correlation?: EstimatedCorrelation;
  /** MDC of one day against one over the error: 2.77 for a known one, more for one known roughly. */
  readonly mdcOverError: number;
}

/** Fewer sessions of practice than this leave learning in the numbers. */
const practised = 3;

export const isPractised = ({ familiarised }: TorqueTest): boolean =>
  familiarised === undefined ||
  familiarised === 'yes' ||
  (typeof familiarised === 'number' && familiarised >= practised);

/**
 * The typical error of an action's test: stated in the file, from repeated days (of this athlete or
 * others, and occasions of several days) with a borrowed one behind them, or borrowed alone.
 *
 * @param occasions days of each occasion, without training between the days of one
 */
export function errorOfTest(
  action: ActionName,
  tests: readonly TorqueTest[],
  occasions: readonly (readonly TestDay[])[],
  repeatability: readonly RepeatedTest[],
): KnownError {
  const own = repeatability.filter(({ of }) => 'action' in of && of.action === action);
  const stated = own.find((entry) => entry.kind === 'typical error');
  if (stated && !('mass' in stated.error)) return known(statedError(stated));
  const squads = own.flatMap((entry) => (entry.kind === 'days' ? [daysOfPeople(entry)] : []));
  const alone = [...squads.filter(({ length }) => length === 1).flat(), ...occasions];
  const repeats = [...squads.flat(), ...occasions].filter((days) => days.length > 1);
  const borrowed = borrowedFor(action, tests);
  const correlation = correlationOf(repeats);
  const measured = [
    ...squads
      .filter(({ length }) => length > 1)
      .map((people) => squadError(people, correlation, borrowed.outer)),
    errorFromRepeats(
      alone.filter((days) => days.length > 1),
      correlation,
      borrowed.outer,
    ),
  ].flatMap((error) => (isRefusal(error) ? [] : [error]));
  if (measured.length === 0) return known(borrowed);
  const combined = measured.reduce((error, own) => combinedError(own, error), borrowed);
  return { ...known(combined), ...(correlation ? { correlation } : {}) };
}

const known = (error: TestError): KnownError => ({
  error,
  mdcOverError: Math.SQRT2 * multiplier(0.95, error.degreesOfFreedom),
});

const daysOfPeople = ({ people, score }: Extract<RepeatedTest, { kind: 'days' }>): TestDay[][] =>
  people.map(({ days }) => days.map((angles) => ({ score, angles })));

/** A torque of both limbs together is halved, as their trials are. */
function statedError({
  error,
  from,
  side,
}: Extract<RepeatedTest, { kind: 'typical error' }>): TestError {
  const { people, days } = from;
  const limbs = side === 'both' ? 2 : 1;
  return {
    ...('share' in error
      ? { amount: error.share, unit: 'share' as const }
      : {
          amount: ('torque' in error ? error.torque : error.mass) / limbs,
          unit: 'newtonMetre' as const,
        }),
    degreesOfFreedom: Math.max((days - 1) * Math.max(people - 1, 1), 1),
    known: 'own',
  };
}

/** By the kind of device: a force felt through a strap or pad, or a torque on a machine. */
function borrowedFor(action: ActionName, tests: readonly TorqueTest[]): TestError {
  const isForce = tests.some(({ measure }) => measure.lever !== undefined);
  const kind: TestKind = isForce ? 'hand-held or strap' : 'single-joint dynamometer';
  return borrowedError(kind, {
    unfamiliar: tests.some((test) => !isPractised(test)),
    middle: middleOf(action),
  });
}

/** The middle half of an action's range (a judgement: no table of middles is published). */
function middleOf(action: ActionName) {
  const [from, to] = actions[action].rangeDeg.map(toRadians) as [number, number];
  const quarter = (to - from) / 4;
  return { from: from + quarter, to: to - quarter };
}

/** From people whose days all hold the same angles; undefined where there are too few. */
function correlationOf(repeats: readonly (readonly TestDay[])[]): EstimatedCorrelation | undefined {
  const tables = repeats.map((days) => {
    const scores = scoresByAngle(days).filter((angle) => angle.days.length === days.length);
    return days.map((_, day) =>
      scores.map((angle) => Math.log(angle.days.find((one) => one.day === day)?.score ?? 0)),
    );
  });
  const found = tables.length === 0 ? undefined : errorCorrelation(tables);
  return found && !isRefusal(found) ? found : undefined;
}
