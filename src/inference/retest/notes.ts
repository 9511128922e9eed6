import type { TestKind } from '../../tables/testError.ts';
import { multiplier } from '../reliability/multiplier.ts';
import { trueScore } from '../reliability/normalShrinkage.ts';
import type { PairedAngle, PairedAngles } from './pairedAngles.ts';
import type { TestDay } from './testDay.ts';
import type { TestError } from './testError.ts';

/** What a coach should know beside the verdicts, as data; the page has the words. */
export type RetestNote =
  | OneTrial
  | UnequalTrials
  | LeftOut
  | ManyAngles
  | PickedAsWeakest
  | Learning
  | BorrowedErrorNote;

/** An angle scored from a single trial: a slip cannot be seen. */
export interface OneTrial {
  readonly about: 'one trial';
  readonly when: 'before' | 'after';
  readonly angles: readonly number[];
}

/** More trials on one side: the best of more trials is higher by itself, the mean is not. */
export interface UnequalTrials {
  readonly about: 'unequal trials';
  readonly angles: readonly number[];
  /** The side that the best of more trials flatters, where all angles agree on it. */
  readonly flatters: 'before' | 'after' | 'both';
}

/** Angles tested on one side only: they count nowhere. */
export interface LeftOut {
  readonly about: 'left out';
  readonly onlyBefore: readonly number[];
  readonly onlyAfter: readonly number[];
}

/** Several angles looked at: chance alone makes one of them stand out more often than the level says. */
export interface ManyAngles {
  readonly about: 'many angles';
  readonly angles: number;
  /** 1 − level^m: at least one false change if nothing changed and errors are independent. */
  readonly chanceOfFalse: number;
  /** Level for each angle at which all of them together keep the level asked (Bonferroni). */
  readonly levelForEach: number;
  /** Standard errors a change has to reach at that level. */
  readonly reachForEach: number;
}

/** The target was picked for being weak: part of its rise comes by itself. */
export interface PickedAsWeakest {
  readonly about: 'picked as weakest';
  readonly reliability: number;
  /** Share of the measured torque that the next test is expected to be off by, without training. */
  readonly changeByItself: number;
  /** Observed share of gain less that. */
  readonly gainLeft: number;
}

/** Early tests rise by learning the test. */
export interface Learning {
  readonly about: 'learning';
  readonly firstEver: boolean;
  readonly familiarised: boolean;
}

export interface BorrowedErrorNote {
  readonly about: 'borrowed error';
  readonly kind?: TestKind;
  readonly unfamiliar: boolean;
  /** False once own days are in it. */
  readonly wholly: boolean;
}

/** Notes on what was tested: single trials, unequal trials, angles of one side only. */
export function testNotes(
  { common, onlyBefore, onlyAfter }: PairedAngles,
  score: TestDay['score'],
): RetestNote[] {
  const left: RetestNote[] =
    onlyBefore.length + onlyAfter.length > 0 ? [{ about: 'left out', onlyBefore, onlyAfter }] : [];
  return [...oneTrial(common), ...unequalTrials(common, score), ...left];
}

const trialsOf = (pair: PairedAngle, when: 'before' | 'after') =>
  pair.scores[when].days.map(({ trials }) => trials);

function oneTrial(common: readonly PairedAngle[]): OneTrial[] {
  return (['before', 'after'] as const).flatMap((when) => {
    const angles = common
      .filter((pair) => trialsOf(pair, when).includes(1))
      .map(({ angle }) => angle);
    return angles.length > 0 ? [{ about: 'one trial', when, angles }] : [];
  });
}

/** A day's mean number of trials on each side; a mean of trials does not rise with their number. */
function unequalTrials(common: readonly PairedAngle[], score: TestDay['score']): UnequalTrials[] {
  if (score === 'mean') return [];
  const mean = (pair: PairedAngle, when: 'before' | 'after') => {
    const trials = trialsOf(pair, when);
    return trials.reduce((sum, n) => sum + n, 0) / trials.length;
  };
  const more = common
    .map((pair) => ({ pair, excess: mean(pair, 'after') - mean(pair, 'before') }))
    .filter(({ excess }) => excess !== 0);
  if (more.length === 0) return [];
  const after = more.filter(({ excess }) => excess > 0).length;
  const flatters = after === more.length ? 'after' : after === 0 ? 'before' : 'both';
  return [{ about: 'unequal trials', angles: more.map(({ pair }) => pair.angle), flatters }];
}

/** What looking at m angles does to the level; nothing for one angle. */
export function manyAngles(
  angles: number,
  level: number,
  { degreesOfFreedom }: TestError,
): ManyAngles | undefined {
  if (angles < 2) return undefined;
  const levelForEach = 1 - (1 - level) / angles;
  return {
    about: 'many angles',
    angles,
    chanceOfFalse: 1 - level ** angles,
    levelForEach,
    reachForEach: multiplier(levelForEach, degreesOfFreedom),
  };
}

/** Why and from what the target was picked. */
export interface Picked {
  /** Intraclass correlation of what made it look weak, 0 to 1. */
  readonly reliability: number;
  /** Mean torque over the target's angles that a squad or a curve would lead one to expect, N·m. */
  readonly expected: number;
}

/**
 * Regression toward the mean of a target picked for being weak: without training its true torque is
 * expected at expected + reliability·(measured − expected) (Kelley 1927).
 *
 * @param before mean torque over the target's common angles, N·m
 * @param gain observed, share
 */
export function pickedAsWeakest(picked: Picked, before: number, gain: number): PickedAsWeakest {
  const { reliability } = picked;
  const likely = trueScore({ mean: picked.expected, spread: 0 }, reliability, before).expected;
  return {
    about: 'picked as weakest',
    reliability,
    changeByItself: likely / before - 1,
    gainLeft: ((1 + gain) * before) / likely - 1,
  };
}

export function borrowedNote({ known, kind, unfamiliar = false }: TestError): BorrowedErrorNote[] {
  if (known === 'own') return [];
  const wholly = known === 'borrowed';
  return [{ about: 'borrowed error', ...(kind ? { kind } : {}), unfamiliar, wholly }];
}
