/** Days tested on each side of the training. */
export interface DaysTested {
  readonly before: number;
  readonly after: number;
}

/** Least and most that the errors of two angles of one day may go together, 0 to 1. */
export interface ErrorCorrelation {
  readonly least: number;
  readonly most: number;
  readonly known: 'own' | 'assumed';
}

/**
 * How errors of the angles of one day go together when nobody measured it: anything from not at
 * all to wholly.
 *
 * No published value was found, and no single one would be safe: a good or a bad day shared by all
 * angles (r = 1) leaves the mean of angles as unsure as one angle, while independent errors (r = 0)
 * leave a difference between angles the least sure. A verdict has to hold for all r, so each
 * quantity takes the end that is worse for it.
 */
export const unknownCorrelation: ErrorCorrelation = { least: 0, most: 1, known: 'assumed' };

/** A reading of one angle on one day: its part in a sum, and its typical error. */
export interface WeighedReading {
  readonly weight: number;
  readonly error: number;
}

/**
 * Standard error of a weighed sum of readings, errors of one day correlated by r, days independent.
 *
 * A day's errors have variance e² each and covariance r·e·e′, so the day adds
 * (1 − r)·Σ w²e² + r·(Σ w·e)². This is linear in r: its largest value over a range of r stands at
 * an end, and the larger of the two ends is taken.
 *
 * Cases of it, each angle read on n₁ days before and n₂ after, v = 1/n₁ + 1/n₂, equal e:
 * - change at one angle, w = ±1/n: e·√v; with one day each e·√2;
 * - mean of m angles, w = ±1/(nm): (1 − r)·e²/m + r·e² a side → e·√v·√((1 + (m − 1)r)/m), worst
 *   at the most r;
 * - mean of m target angles less mean of q others: Σ w·e = 0 a day → e·√v·√((1/m + 1/q)(1 − r)),
 *   worst at the least r; for two single angles and one day each that is 2·e·√(1 − r).
 *
 * @param days readings of each test day, before or after alike (a sign does not matter)
 * @returns in the unit of the errors
 */
export function errorOfSum(
  days: readonly (readonly WeighedReading[])[],
  correlation: ErrorCorrelation,
): number {
  // Sums over days of Σ w²e² and of (Σ w·e)²: the variance at r = 0 and at r = 1.
  let [apart, together] = [0, 0];
  for (const readings of days) {
    let shared = 0;
    for (const { weight, error } of readings) {
      apart += (weight * error) ** 2;
      shared += weight * error;
    }
    together += shared ** 2;
  }
  const at = (r: number) => (1 - r) * apart + r * together;
  return Math.sqrt(Math.max(at(correlation.least), at(correlation.most)));
}

/** What is averaged or compared: m target angles, and q others if they are compared with. */
export interface AnglesCompared {
  readonly target: number;
  readonly others?: number;
}

/**
 * Standard error of a change when all angles have one typical error and all days test all angles.
 *
 * @param typicalError of one day's score, any unit or a share
 * @param angles one for a single angle; with `others`, the mean change of the target less theirs
 */
export function errorOfChange(
  typicalError: number,
  days: DaysTested,
  angles: AnglesCompared = { target: 1 },
  correlation: ErrorCorrelation = unknownCorrelation,
): number {
  const { target, others = 0 } = angles;
  const readings = (days: number) => [
    ...Array<WeighedReading>(target).fill({ weight: 1 / (days * target), error: typicalError }),
    ...Array<WeighedReading>(others).fill({ weight: -1 / (days * others), error: typicalError }),
  ];
  const every = [days.before, days.after].flatMap((n) => Array(n).fill(readings(n)));
  return errorOfSum(every, correlation);
}
