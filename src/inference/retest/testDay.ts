import { meanOf } from '../../numeric/moments.ts';

/** Trials at one angle on one day. */
export interface AngleTrials {
  /** Radians. */
  readonly angle: number;
  /** N·m. */
  readonly trials: readonly number[];
}

/** One day's test of one action. */
export interface TestDay {
  /** Which of the trials counts. */
  readonly score: 'best' | 'mean';
  readonly angles: readonly AngleTrials[];
}

/** One angle's score on one day of an occasion. */
export interface DayScore {
  readonly day: number;
  readonly score: number;
  readonly trials: number;
}

/** The angles of an occasion with their scores by day, in order of angle; angles without trials left out. */
export interface AngleScores {
  readonly angle: number;
  readonly days: readonly DayScore[];
}

/** A hundredth of a degree: angles nearer than this are one angle written twice. */
const sameAngle = 1.8e-4;

export const isSameAngle = (a: number, b: number): boolean => Math.abs(a - b) < sameAngle;

/** Scores of an occasion's test days by angle, N·m. */
export function scoresByAngle(days: readonly TestDay[]): AngleScores[] {
  const tested = days.flatMap(({ angles }) => angles).filter(({ trials }) => trials.length > 0);
  const angles = tested
    .map(({ angle }) => angle)
    .sort((a, b) => a - b)
    .filter((angle, i, all) => i === 0 || !isSameAngle(angle, all[i - 1] ?? 0));
  return angles.map((angle) => ({
    angle,
    days: days.flatMap((testDay, day) => dayScore(testDay, day, angle)),
  }));
}

function dayScore({ score, angles }: TestDay, day: number, angle: number): DayScore[] {
  const trials = angles.flatMap((at) => (isSameAngle(at.angle, angle) ? at.trials : []));
  if (trials.length === 0) return [];
  const value = score === 'best' ? Math.max(...trials) : meanOf(trials);
  return [{ day, score: value, trials: trials.length }];
}

/** An occasion's score at an angle: the mean of its days, N·m. */
export const meanScore = ({ days }: AngleScores): number => meanOf(days.map(({ score }) => score));
