import { adaptationPriors, type CoefficientName, coefficientNames } from './adaptationPriors.ts';
import { evidence } from './evidence.ts';
import { fittedCoefficients, fittedFrom } from './fittedCoefficients.ts';
import type { Sourced } from './sourced.ts';

/** Spread left over spread before, below which the studies count as having told something. */
const narrowed = 0.85;

/**
 * Coefficients of the adaptation model; `physiology/adaptation.ts` and `dose.ts` give the
 * equations. Values are those of the fit to all study files, held to the priors of
 * `adaptationPriors.ts`; a row is `fitted` where the studies narrowed its prior noticeably, else it
 * stays a `prior` that they moved little.
 */
export const adaptation = Object.fromEntries(
  coefficientNames.map((name) => [name, rowOf(name)]),
) as Readonly<Record<CoefficientName, Sourced>>;

export type Coefficients = Readonly<Record<CoefficientName, number>>;

/** The coefficients as plain numbers. */
export const coefficients: Coefficients = valuesOf((name) => adaptation[name].value);

/** What they would be without any study. */
export const priorCoefficients: Coefficients = valuesOf((name) => adaptationPriors[name].value);

function valuesOf(value: (name: CoefficientName) => number): Coefficients {
  return Object.fromEntries(coefficientNames.map((name) => [name, value(name)])) as Coefficients;
}

function rowOf(name: CoefficientName): Sourced {
  const { unit, logSpread, source } = adaptationPriors[name];
  const { value, logError } = fittedCoefficients[name];
  const spread = Number((value * logError).toPrecision(2));
  return logError < narrowed * logSpread
    ? { value, unit, spread, known: 'fitted', source: 'published training studies, named above' }
    : { value, unit, spread, known: 'prior', source };
}

/**
 * Fixed shape of the dose–gain curves, degrees of knee flexion: the two angles at which the widths
 * and the fade are stated, the stretch over which the width changes, its floor and that of the
 * fade, and the angle over which work passes from short to long. Working values: no study tells
 * them apart from the fitted coefficients.
 */
export const kernel = {
  shortAtDeg: 40,
  longAtDeg: 90,
  fromDeg: 20,
  toDeg: 110,
  leastWidthDeg: 6,
  leastFade: 0.2,
  lengthScaleDeg: 25,
} as const;

/**
 * Largest gain of isometric torque found in a group of the studies read: +40.5 % (Kubo 2010, after
 * months of holds; read). No forecast goes beyond it.
 */
export const largestGain: Sourced = {
  value: 0.405,
  unit: 'share',
  spread: 0.1,
  known: 'read',
  source: 'Kubo 2010, knee extension holds',
};

/**
 * How far the model misses the difference between two groups of one study that it has not seen, as a
 * share of the larger predicted gain (root mean square over strength). Programs closer than this
 * cannot be told apart.
 */
export const contrastMiss: Sourced = leftOutMiss(evidence.contrastMiss, 'share of the larger gain');

/** The same for one group's gain itself, share of the predicted gain. */
export const gainMiss: Sourced = leftOutMiss(evidence.gainMiss, 'share of the gain');

function leftOutMiss(value: number, unit: string): Sourced {
  const source = 'published training studies, each predicted from the others';
  return { value, unit, spread: 0.1, known: 'fitted', source };
}

/** What every fitted row rests on, in words. */
export const fittedTo = `${fittedFrom.findings} findings of ${fittedFrom.studies} published training studies, listed by \`torqueleaf evidence\``;
