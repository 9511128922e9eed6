import { type Calibration, calibrateLifts, liftFactors } from '../inference/calibrateLifts.ts';
import { fitStrength, type StrengthFit, scored } from '../inference/fitStrength.ts';
import { errorShareAt } from '../inference/retest/testError.ts';
import type { Lift } from '../mechanics/lift.ts';
import type { Measured } from '../notebook/scenario.ts';
import { setUpsOf } from '../notebook/tests/setUpsOf.ts';
import type { LiftTest, Retest, Test } from '../notebook/tests/strengthTest.ts';
import type { Problem } from '../notebook/text/problem.ts';
import type { Source } from '../notebook/text/source.ts';
import { toDegrees, toRadians } from '../numeric/degrees.ts';
import { meanOf } from '../numeric/moments.ts';
import type { Athlete } from '../physiology/athlete.ts';
import { bodyOf } from '../physiology/body.ts';
import { stickingPoint } from '../physiology/heaviestLoad.ts';
import { levelShank } from '../physiology/limbWeight.ts';
import { firstAngle } from '../physiology/measuredSingle.ts';
import { restingCapacity } from '../physiology/trainedState.ts';
import { liftBalance, unbalanced } from '../problems/balanceProblems.ts';
import { fitRemarks } from '../problems/fitRemarks.ts';
import { limbProblems } from '../problems/limbProblems.ts';
import { testRemarks } from '../problems/testRemarks.ts';
import { torqueRemarks } from '../problems/torqueRemarks.ts';
import { liftNamed, lifts } from '../tables/lifts.ts';
import { errorOfTest } from './errorOfTest.ts';
import { athleteWith } from './handedOver.ts';
import { measuredActions, type TestedTorques, testDays, testedTorques } from './testedTorques.ts';

/** What body and tests alone say of the athlete, before any program. */
export interface KnownAthlete {
  readonly athlete: Athlete;
  /** The lifts that programs may use: the catalogue's and the file's own. */
  readonly catalogue: readonly Lift[];
  /** Body mass, kg. */
  readonly mass: number;
  readonly tests: readonly Test[];
  /** Torque tests as torques of the muscles, and of shank and foot held level, N·m. */
  readonly torques: readonly TestedTorques[];
  readonly levelShank: number;
  /** Tested actions: curve, its 90 % band, each test beside it and what to check. */
  readonly fits: readonly StrengthFit[];
  readonly singles: readonly LiftTest[];
  readonly calibrations: readonly Calibration[];
}

/** Fits the athlete to the tests. Without a body in which every tested lift can be held, some factor is not finite. */
export function knowAthlete(measured: Measured): KnownAthlete {
  const { reference, mass } = measured.subject;
  const body = bodyOf(measured.subject);
  const torques = testedTorques(measured.tests, body);
  const points = measuredActions(torques);
  const fits = fitStrength(reference, mass, points, (action) => {
    const tested = torques.filter(({ test }) => test.action === action);
    const tests = tested.map(({ test }) => test);
    const { error } = errorOfTest(
      action,
      tests,
      setUpsOf(tested).map(testDays),
      measured.repeatability,
    );
    const own = points.filter((point) => point.action === action).map(({ torque }) => torque);
    const share = error.unit === 'share' ? error.amount : error.amount / meanOf(own);
    const at = (deg: number, torque: number) => errorShareAt(error, toRadians(deg), torque);
    return { share, known: error.known, at };
  });
  const catalogue = [...lifts, ...measured.lifts];
  const singles = measured.tests.filter((test) => test.kind === 'lift');
  const untested = athleteWith(measured, fits, {});
  const calibrations = calibrateLifts(untested, singles, catalogue);
  return {
    athlete: athleteWith(measured, fits, liftFactors(calibrations, catalogue)),
    catalogue,
    mass,
    tests: measured.tests,
    torques,
    levelShank: levelShank(body),
    fits,
    singles,
    calibrations,
  };
}

/** What is wrong with declared lifts and tested singles of this athlete, else what is worth a look. */
export function athleteProblems(
  source: Source,
  declared: readonly Lift[],
  { athlete, catalogue, tests, torques, mass, fits, singles, calibrations }: KnownAthlete,
): { readonly problems: readonly Problem[]; readonly remarks: readonly Problem[] } {
  const weightless = torques.flatMap(({ points }) => limbProblems(source, points));
  if (weightless.length > 0) return { problems: weightless, remarks: [] };
  const balances = declared.map((lift) => liftBalance(source, lift, athlete.body));
  const unstable = balances.flatMap(({ problems }) => problems);
  if (unstable.length > 0) return { problems: unstable, remarks: [] };
  const odd = torques.map((tested) => oddTorques(source, tested, mass));
  // One question about an action is enough: what is implausible by itself fits nothing either.
  const asked = new Set(torques.flatMap(({ test }, i) => (odd[i]?.length ? [test.action] : [])));
  const unasked = fits.filter(({ action }) => !asked.has(action));
  const unheld = singles.filter((_, i) => !Number.isFinite(calibrations[i]?.factor));
  return {
    problems: unheld.map((test) =>
      unbalanced(source, test, liftNamed(test.lift, catalogue), athlete.body),
    ),
    remarks: [
      ...balances.flatMap(({ notes }) => notes),
      ...singles.flatMap((test, i) => testRemarks(source, test, calibrations, i)),
      ...odd.flat(),
      ...fitRemarks(source, tests, unasked),
    ],
  };
}

/**
 * Trials of retests of which the weight of the limb leaves nothing, and their singles that this body
 * cannot hold in balance.
 */
export function retestProblems(
  source: Source,
  retests: readonly Retest[],
  { athlete, catalogue }: Pick<KnownAthlete, 'athlete' | 'catalogue'>,
): readonly Problem[] {
  const tests = retests.flatMap((retest) => retest.tests);
  const weightless = testedTorques(tests, athlete.body).flatMap(({ points }) =>
    limbProblems(source, points),
  );
  const capacity = restingCapacity(athlete);
  const unheld = tests.flatMap((test) => {
    if (test.kind !== 'lift') return [];
    const lift = liftNamed(test.lift, catalogue);
    const range = { lift, from: test.from ?? firstAngle(lift), to: test.to };
    const { effort } = stickingPoint(range, athlete.body, capacity, test.best);
    return Number.isFinite(effort) ? [] : [unbalanced(source, test, lift, athlete.body)];
  });
  return [...weightless, ...unheld];
}

/** Tests whose scored torques sit oddly with body mass or with the usual curve. */
function oddTorques(source: Source, { test, points }: TestedTorques, mass: number): Problem[] {
  const placed = points.map(({ angle, trials, path }) => ({
    deg: toDegrees(angle),
    torque: scored(trials, test.score),
    path,
  }));
  return torqueRemarks(source, test, placed, mass);
}
