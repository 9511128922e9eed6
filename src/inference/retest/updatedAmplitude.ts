import { gainMiss } from '../../tables/adaptation.ts';
import { gainBetweenPeople } from '../../tables/testError.ts';
import { type Belief, believedBetween, normalShrinkage } from '../reliability/normalShrinkage.ts';
import { type Refusal, refusal } from '../reliability/refusal.ts';

/** A gain of the target, observed and as it was forecast; shares. */
export interface GainSeen {
  readonly observed: number;
  /** Of the observed gain. */
  readonly standardError: number;
  readonly predicted: number;
  /**
   * How far the forecast misses a group's gain, share of the gain: what the model gets wrong about
   * this program says nothing about the athlete. 0 if the next plan is the same program again.
   */
  readonly modelMiss?: number;
  /** What earlier retests of the athlete say; left out: mean 1, spread as people differ. */
  readonly prior?: Belief;
}

/** How much of a forecast gain this athlete makes, for the next forecast. */
export interface UpdatedAmplitude {
  /** Factor on the next forecast gain. */
  readonly ratio: number;
  readonly spread: number;
  readonly low: number;
  readonly high: number;
  /** Observed over predicted, before it was drawn toward 1. */
  readonly seen: number;
  /** How far the observation moved it, 0 to 1. */
  readonly weight: number;
  /** One retest says little: always so for now, and said with the number. */
  readonly evidence: 'weak';
}

/** Below this share a forecast gain is too small to measure an athlete by. */
const leastPredicted = 0.03;

/**
 * How this athlete's gain beside the forecast changes the next forecast.
 *
 * Normal prior on observed over predicted: mean 1, spread as people differ (0.5, a judgement); the
 * observation's error is test noise over the predicted gain, with the model's own miss added. With
 * a test error of 4 % and a forecast of 10 % about a third of the difference is believed. Evidence
 * that people keep their place as strong or weak responders is poor, so one retest is weak evidence.
 *
 * @returns ratio of the next forecast, or why there is none: a forecast gain of almost nothing
 */
export function updatedAmplitude({
  observed,
  standardError,
  predicted,
  modelMiss = gainMiss.value,
  prior = { mean: 1, spread: gainBetweenPeople.value },
}: GainSeen): UpdatedAmplitude | Refusal {
  if (!(predicted >= leastPredicted))
    return refusal(
      'no-forecast-gain',
      'the forecast gain is below 3 %, less than any test can tell; an athlete cannot be measured against it',
    );
  const seen = observed / predicted;
  const error = Math.hypot(standardError / predicted, modelMiss);
  const { mean, spread, weight } = normalShrinkage(prior, seen, error);
  return {
    ratio: mean,
    spread,
    ...believedBetween({ mean, spread }),
    seen,
    weight,
    evidence: 'weak',
  };
}
