import { isSameAngle } from '../../numeric/degrees.ts';
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
  /** Each angle once. */
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

/** Scores of an occasion's test days by angle, N·m. */
export function scoresByAngle(days: readonly TestDay[]): AngleScores[] {
  const byAngle: { angle: number; days: DayScore[] }[] = [];
  const readings = days.flatMap(dayScores).sort((a, b) => a.angle - b.angle);
  for (const { angle, ...score } of readings) {
    const last = byAngle.at(-1);
    if (last && isSameAngle(last.angle, angle)) last.days.push(score);
    else byAngle.push({ angle, days: [score] });
  }
  return byAngle;
}

function dayScores({ score, angles }: TestDay, day: number) {
  return angles
    .filter(({ trials }) => trials.length > 0)
    .map(({ angle, trials }) => ({
      angle,
      day,
      score: score === 'best' ? Math.max(...trials) : meanOf(trials),
      trials: trials.length,
    }));
}

/** An occasion's score at an angle: the mean of its days, N·m. */
export const meanScore = ({ days }: AngleScores): number => meanOf(days.map(({ score }) => score));
