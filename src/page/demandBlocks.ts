import type { Joint } from '../mechanics/lift.ts';
import { toDegrees } from '../numeric/degrees.ts';
import type { Sample } from '../physiology/exercise.ts';
import type { PlannedExercise } from '../physiology/planProgram.ts';
import type { ProgramResult, Results } from '../run.ts';
import { type ActionName, actions, jointWords } from '../tables/actions.ts';
import { liftingStrength } from '../tables/movingStrength.ts';
import { chartFrame } from './chartFrame.ts';
import { distinctLifts } from './distinctLifts.ts';
import type { Block } from './report.ts';
import { degrees, kilograms, listInWords, percent } from './words.ts';

/** A strength factor this far from 1 is said beside the chart (working value). */
const worthSaying = 0.05;

/** Demand of each lift on the target's muscles against what the athlete has, by angle. */
export function demandBlocks(program: ProgramResult, results: Results): Block[] {
  const { athlete, question } = results;
  const { shown, xDeg, band } = chartFrame(results);
  const { joint, sense } = actions[question.action];
  const lifts = distinctLifts(program).filter(({ samples }) =>
    samples.some(({ effort }) => effort[question.action] !== undefined),
  );
  if (lifts.length === 0) return [];
  const series = lifts.map((lift) => ({
    name: `asked by ${nameOf(lift)}${rangeIfTwice(lift, lifts)}`,
    y: shown.map(({ deg }) => {
      const torque = askedAt(lift.samples, joint, deg);
      // On the scale of the curves, so that a line that touches the athlete's is all there is.
      return Math.max(sense * torque, 0) / (lift.strength ?? 1);
    }),
  }));
  const { torque } = athlete.groups[question.action];
  return [
    {
      kind: 'text',
      text:
        `In the first week${program.program.phases ? ' of each phase' : ''} ${demandSentence(lifts, question.action)}` +
        scaleSentence(lifts, results),
    },
    {
      kind: 'chart',
      chart: {
        title: `${question.action} torque, one side (N·m)`,
        x: xDeg,
        series: [{ name: 'athlete has', y: shown.map(({ i }) => torque[i] ?? 0) }, ...series],
        band,
      },
    },
  ];
}

const nameOf = ({ exercise }: PlannedExercise) =>
  exercise.kind === 'lift' ? exercise.range.lift.name : '';

/** Where a lift is drawn twice, what tells the two apart. */
function rangeIfTwice({ exercise }: PlannedExercise, lifts: readonly PlannedExercise[]): string {
  if (exercise.kind !== 'lift') return '';
  const { range, load } = exercise;
  const isTwice = lifts.filter((lift) => nameOf(lift) === range.lift.name).length > 1;
  return isTwice ? ` to ${degrees(range.to)} with ${kilograms(load)}` : '';
}

/**
 * Torque of a joint at one of its angles, N·m, by a straight line between the two samples around
 * it; at most half a sample's step (2.6°) beyond the ends, where the range ends off the grid.
 */
function askedAt(samples: readonly Sample[], joint: Joint, deg: number): number {
  const points = samples
    .map(({ asked }) => ({
      deg: toDegrees(asked.angles[joint] ?? 0),
      torque: asked.torques[joint] ?? 0,
    }))
    .sort((a, b) => a.deg - b.deg);
  const next = points.findIndex((point) => point.deg >= deg);
  const [before, after] = [points[next - 1], points[next]];
  if (before && after)
    return (
      before.torque +
      ((deg - before.deg) / (after.deg - before.deg)) * (after.torque - before.torque)
    );
  const end = next < 0 ? points[points.length - 1] : points[0];
  return end && Math.abs(end.deg - deg) < 2.6 ? end.torque : Number.NaN;
}

function demandSentence(lifts: readonly PlannedExercise[], action: ActionName): string {
  const { joint, muscles } = actions[action];
  const parts = lifts.map((lift) => {
    const effortIn = (sample: Sample) => sample.effort[action] ?? 0;
    const hardest = lift.samples.reduce((a, b) => (effortIn(b) > effortIn(a) ? b : a));
    const angle = degrees(hardest.asked.angles[joint] ?? 0);
    return `the ${nameOf(lift)}${rangeIfTwice(lift, lifts)} asks most of the ${muscles} at ${angle} of ${jointWords[joint].name} ${jointWords[joint].motion} (${percent(effortIn(hardest))} of what they can give when fresh)`;
  });
  return `${listInWords(parts)}.`;
}

/** Why the lines of some lifts are scaled; nothing where they are drawn nearly as they are. */
function scaleSentence(lifts: readonly PlannedExercise[], { calibrations }: Results): string {
  const tested = new Set(calibrations.map(({ single }) => single.lift));
  const sentences = lifts
    .filter(({ strength = 1 }) => Math.abs(strength - 1) > worthSaying)
    .map((lift) => {
      const { exercise, strength = 1 } = lift;
      const shown =
        exercise.kind === 'lift' && exercise.lowerOnly
          ? 'can be lowered under control'
          : tested.has(nameOf(lift))
            ? 'the tested single shows'
            : Math.abs(strength - liftingStrength.value) < 1e-9
              ? 'can be lifted rather than held'
              : 'tested singles of its kind show';
      return ` The line of the ${nameOf(lift)} is scaled to what ${shown}: ${percent(strength)} of the curve.`;
    });
  return [...new Set(sentences)].join('');
}
