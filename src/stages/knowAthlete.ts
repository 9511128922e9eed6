import { type Calibration, calibrateLifts, liftFactors } from '../inference/calibrateLifts.ts';
import { fitStrength, type StrengthFit } from '../inference/fitStrength.ts';
import type { Lift } from '../mechanics/lift.ts';
import type { Problem } from '../notebook/problem.ts';
import type { LiftTest, Measured, Test } from '../notebook/scenario.ts';
import type { Source } from '../notebook/source.ts';
import type { Athlete } from '../physiology/athlete.ts';
import { liftBalance, unbalanced } from '../problems/balanceProblems.ts';
import { fitRemarks } from '../problems/fitRemarks.ts';
import { testRemarks } from '../problems/testRemarks.ts';
import { liftNamed, lifts } from '../tables/lifts.ts';
import { athleteWith, measuredActions } from './handedOver.ts';

/** What body and tests alone say of the athlete, before any program. */
export interface KnownAthlete {
  readonly athlete: Athlete;
  /** The lifts that programs may use: the catalogue's and the file's own. */
  readonly catalogue: readonly Lift[];
  readonly tests: readonly Test[];
  /** Tested actions: curve, its 90 % band, each test beside it and what to check. */
  readonly fits: readonly StrengthFit[];
  readonly singles: readonly LiftTest[];
  readonly calibrations: readonly Calibration[];
}

/** Fits the athlete to the tests. Without a body in which every tested lift can be held, some factor is not finite. */
export function knowAthlete(measured: Measured): KnownAthlete {
  const { reference, mass } = measured.subject;
  const fits = fitStrength(reference, mass, measuredActions(measured));
  const catalogue = [...lifts, ...measured.lifts];
  const singles = measured.tests.filter((test) => test.kind === 'lift');
  const untested = athleteWith(measured, fits, {});
  const calibrations = calibrateLifts(untested, singles, catalogue);
  return {
    athlete: athleteWith(measured, fits, liftFactors(calibrations, catalogue)),
    catalogue,
    tests: measured.tests,
    fits,
    singles,
    calibrations,
  };
}

/** What is wrong with declared lifts and tested singles of this athlete, else what is worth a look. */
export function athleteProblems(
  source: Source,
  declared: readonly Lift[],
  { athlete, catalogue, tests, fits, singles, calibrations }: KnownAthlete,
): { readonly problems: readonly Problem[]; readonly remarks: readonly Problem[] } {
  const balances = declared.map((lift) => liftBalance(source, lift, athlete.body));
  const unstable = balances.flatMap(({ problems }) => problems);
  if (unstable.length > 0) return { problems: unstable, remarks: [] };
  const unheld = singles.filter((_, i) => !Number.isFinite(calibrations[i]?.factor));
  return {
    problems: unheld.map((test) =>
      unbalanced(source, test, liftNamed(test.lift, catalogue), athlete.body),
    ),
    remarks: [
      ...balances.flatMap(({ notes }) => notes),
      ...fitRemarks(source, tests, fits),
      ...singles.flatMap((test, i) => testRemarks(source, test, calibrations, i)),
    ],
  };
}
