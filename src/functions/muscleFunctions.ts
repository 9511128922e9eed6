import { plain } from '../notebook/formula/dimensions.ts';
import { number, type Value } from '../notebook/formula/values.ts';
import { toDegrees } from '../numeric/degrees.ts';
import { operatingLength, tendonArmAt } from '../physiology/muscleGeometry.ts';
import type { MuscleJoint } from '../tables/muscleRow.ts';
import { muscles } from '../tables/muscles.ts';
import { turnAngle } from './angleConvention.ts';
import type { AskedAthlete } from './askedAthlete.ts';
import { asNumber, asText, type ModelFunction, modelFunction, named } from './modelFunction.ts';
import { angle, length } from './quantities.ts';
import type { Step } from './step.ts';

const muscleSteps = ([muscle, joint]: readonly Value[]): readonly Step[] => [
  { step: 'muscle', muscle: String(muscle), joint: String(joint) },
];

/** What the muscle tables say, the same for every athlete. */
export function muscleFunctions({ scenario }: AskedAthlete): ModelFunction[] {
  const parameters = [asText('muscle'), asText('joint'), asNumber('angle', angle)];
  const posture = ([name, joint, at]: readonly Value[]) => {
    const muscle = named('muscle', name, muscles);
    const crossed = (Object.keys(muscle.arms) as MuscleJoint[]).map((one) => ({ name: one }));
    const { name: over } = named(`joint that ${muscle.name} crosses`, joint, crossed);
    const flexion = turnAngle(scenario.convention, over, Number(at));
    return { muscle, over, deg: toDegrees(flexion) };
  };
  return [
    modelFunction({
      name: 'tendon_arm',
      parameters,
      gives: 'lever arm of a muscle’s tendon at a joint',
      returns: () => number(length),
      run: (args) => {
        const { muscle, over, deg } = posture(args);
        return Math.abs(tendonArmAt(muscle, over, deg));
      },
      example: { formula: 'tendon_arm("vastus lateralis", "knee", 60 deg)' },
      rests: muscleSteps,
    }),
    modelFunction({
      name: 'fibre_length',
      parameters,
      gives:
        'length of its fibres at full effort, 1 where they are strongest, other joints as standing',
      returns: () => number(plain),
      run: (args) => {
        const { muscle, over, deg } = posture(args);
        return operatingLength(muscle, { [over]: deg }, 1);
      },
      example: { formula: 'fibre_length("vastus lateralis", "knee", 90 deg)' },
      rests: muscleSteps,
    }),
  ];
}
