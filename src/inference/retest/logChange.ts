import { around, type Between, eachEnd } from '../reliability/between.ts';
import {
  type ErrorCorrelation,
  errorOfSum,
  type WeighedReading,
} from '../reliability/errorOfChange.ts';
import type { PairedAngle } from './pairedAngles.ts';
import { errorShareAt, type TestError } from './testError.ts';

/** A weighed sum of log changes, with what chance alone does to it. */
export interface LogChange {
  readonly estimate: number;
  readonly standardError: number;
  /** Standard errors to either end of the interval. */
  readonly reach: number;
  readonly degreesOfFreedom: number;
}

/** What all verdicts of one retest share. */
export interface Noise {
  readonly error: TestError;
  readonly correlation: ErrorCorrelation;
  /** Standard errors to either end of an interval at the level asked. */
  readonly reach: number;
}

/**
 * Torque between the two of a pair that a share is of: (after − before)/ln(after/before), the
 * logarithmic mean. With it a change in N·m and the log ratio pass their limits together.
 */
export function torqueBetween({ before, after, logRatio }: PairedAngle): number {
  // Near equal the quotient loses its digits; the plain mean differs by less than 1e-13 there.
  return Math.abs(logRatio) < 1e-6 ? (before + after) / 2 : (after - before) / logRatio;
}

/**
 * Σ w·ln(after/before) over angles, and its standard error.
 *
 * @param pairs angles with their weights; a mean has weights that sum to 1, a contrast to 0
 */
export function logChange(
  pairs: readonly { readonly pair: PairedAngle; readonly weight: number }[],
  { error, correlation, reach }: Noise,
): LogChange {
  const errors = pairs.map(({ pair }) => errorShareAt(error, pair.angle, torqueBetween(pair)));
  const side = (when: 'before' | 'after') => {
    const days = new Map<number, WeighedReading[]>();
    for (const [i, { pair, weight }] of pairs.entries()) {
      const scores = pair.scores[when].days;
      const reading = { weight: weight / scores.length, error: errors[i] ?? 0 };
      for (const { day } of scores) {
        const readings = days.get(day);
        if (readings) readings.push(reading);
        else days.set(day, [reading]);
      }
    }
    return [...days.values()];
  };
  return {
    estimate: pairs.reduce((sum, { pair, weight }) => sum + weight * pair.logRatio, 0),
    standardError: errorOfSum([...side('before'), ...side('after')], correlation),
    reach,
    degreesOfFreedom: error.degreesOfFreedom,
  };
}

/** Change as a share with its interval: exp of the log change and its ends, less 1. */
export function asShare({ estimate, standardError, reach }: LogChange): Between {
  return eachEnd(around(estimate, reach * standardError), Math.expm1);
}

/** Which way a change is beyond what noise does at the level, if it is. */
export function direction({ estimate, standardError, reach }: LogChange): 'up' | 'down' | 'none' {
  if (Math.abs(estimate) <= reach * standardError) return 'none';
  return estimate > 0 ? 'up' : 'down';
}
