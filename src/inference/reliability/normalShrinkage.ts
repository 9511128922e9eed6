import { normalCumulative, normalQuantile } from '../../numeric/normal.ts';

/** What is believed of a number: a normal distribution. */
export interface Belief {
  readonly mean: number;
  readonly spread: number;
}

/** A belief after an observation, and how much of the way to the observation it went. */
export interface ShrunkBelief extends Belief {
  /** 0: the observation changed nothing; 1: the prior counts no more. */
  readonly weight: number;
}

/**
 * A normal prior meets a normal observation: weight σ²/(σ² + SE²), mean moved by it, spread
 * σ·√(1 − weight) (Gelman and others, Bayesian Data Analysis, 2.5).
 *
 * @param observed same unit as the prior; standard error above 0
 */
export function normalShrinkage(
  prior: Belief,
  observed: number,
  standardError: number,
): ShrunkBelief {
  const weight = prior.spread ** 2 / (prior.spread ** 2 + standardError ** 2);
  return {
    weight,
    mean: prior.mean + weight * (observed - prior.mean),
    spread: prior.spread * Math.sqrt(1 - weight),
  };
}

/** Chance that a believed number lies above x. */
export function believedAbove({ mean, spread }: Belief, x: number): number {
  return normalCumulative((mean - x) / spread);
}

/** Ends between which a believed number lies with the level's chance. */
export function believedBetween({ mean, spread }: Belief, level = 0.95) {
  const reach = normalQuantile((1 + level) / 2) * spread;
  return { low: mean - reach, high: mean + reach };
}

/** A person's true score as the group leads one to expect it. */
export interface TrueScore {
  readonly expected: number;
  /** Error of one score, SD·√(1 − reliability). */
  readonly standardErrorOfMeasurement: number;
  /** Error of the expectation, SD·√(reliability·(1 − reliability)). */
  readonly standardErrorOfEstimate: number;
}

/**
 * True score behind an observed one: the group's mean + reliability·(score − mean) (Kelley 1927).
 * It is why an angle picked for being the weakest rises by itself at the next test.
 *
 * @param group mean and spread of observed scores between people (or between angles)
 * @param reliability intraclass correlation, 0 to 1
 */
export function trueScore(group: Belief, reliability: number, score: number): TrueScore {
  return {
    expected: group.mean + reliability * (score - group.mean),
    standardErrorOfMeasurement: group.spread * Math.sqrt(1 - reliability),
    standardErrorOfEstimate: group.spread * Math.sqrt(reliability * (1 - reliability)),
  };
}
