/** Heights that a coach wrote, beside the angles they came to. */
import type { MuscledJoint } from '../mechanics/lift.ts';
import type { PlacedHeight } from '../notebook/scenario.ts';
import type { Results } from '../run.ts';
import { jointWords } from '../tables/actions.ts';
import { liftNamed, lifts } from '../tables/lifts.ts';
import { seatToHipJoint } from '../tables/seat.ts';
import { degrees, kilograms } from './words.ts';

interface WithHeights {
  readonly heights?: readonly PlacedHeight[];
}

/**
 * Each height of an exercise or test with the angle it came to, as in " Box of 42 cm = 113° of knee
 * flexion (hip joint 50.5 cm high)."; empty without heights.
 *
 * @param leading joint whose angles they are
 */
export function heightSentences({ heights = [] }: WithHeights, leading: MuscledJoint): string {
  const { name, motion } = jointWords[leading];
  return heights
    .map((placed) => {
      const joint =
        placed.height.kind === 'pins' ? [] : [`hip joint ${centimetres(placed.hip)} high`];
      const details = [...joint, ...loadWords(placed)].join('; ');
      return ` ${written(placed)} = ${degrees(placed.angle)} of ${name} ${motion} (${details}).`;
    })
    .join('');
}

function written({ height }: PlacedHeight): string {
  if (height.kind === 'thigh level') return 'Thigh level';
  return `${height.kind === 'box' ? 'Box of' : 'Pins at'} ${centimetres(height.height)}`;
}

/** With which load the angle was found where that counts, and what others would make of it. */
function loadWords({ height, load, spread }: PlacedHeight): string[] {
  if (!spread) return height.kind === 'pins' ? [`with ${kilograms(load)}`] : [];
  const others = spread.loads.map((other, i) => {
    const angle = spread.angles[i];
    const reached = angle !== undefined && Number.isFinite(angle);
    return `${reached ? degrees(angle) : 'out of reach'} with ${kilograms(other)}`;
  });
  return [`with ${kilograms(load)}, as the load is not known; ${others.join(', ')}`];
}

/** What heights rest on, and what those of tests came to; nothing if no height is written. */
export function heightAssumptions({ scenario }: Results): string[] {
  const tests = scenario.tests.filter((test) => test.kind === 'lift');
  const work = scenario.programs.flatMap((program) => program.work);
  if (![...tests, ...work].some((entry) => 'heights' in entry)) return [];
  const known = [...lifts, ...scenario.lifts];
  const tested = tests.flatMap((test) => {
    const told = heightSentences(test, liftNamed(test.lift, known).leading).trim();
    return told === '' ? [] : [`Tested ${test.lift}: ${told}`];
  });
  const { value, spread } = seatToHipJoint;
  return [
    `Heights are turned into angles with the athlete’s segment lengths, barefoot, from the floor under the working foot: sitting, the hip joint is ${centimetres(value)} above the box (${centimetres(value - spread)} to ${centimetres(value + spread)}, a working value); thigh level, hip and knee joint are equally high; pins carry the middle of the bar.`,
    ...tested,
  ];
}

/** To the half centimetre to which a coach measures. */
const centimetres = (height: number) => `${Math.round(200 * height) / 2} cm`;
