import type { Outcome } from '../../notebook/study/study.ts';
import { armGrowth } from '../../physiology/armGrowth.ts';
import { actingFibre, fibreChange, type MuscleChange } from '../../physiology/muscleChange.ts';
import { muscles } from '../../tables/muscles.ts';
import { regions } from '../../tables/quadriceps.ts';
import { placeOfMuscle, trainedMuscles } from '../../tables/trainedMuscles.ts';
import type { Prediction, Trained } from './predictOutcome.ts';

type MuscleOutcome = Extract<Outcome, { readonly muscles: readonly string[] }>;

/** Change of one muscle and its area, by which several measured together are weighed. */
interface Changed {
  readonly change: number;
  readonly area: number;
}

/**
 * Growth, fibre length or tendon arm of one muscle or several measured together.
 *
 * The model's growth g is of force-bearing area. Volume, area across the belly and thickness also
 * hold what longer fibres add, (1 + g)(1 + l) − 1, since the belly keeps its length; l is the share
 * of measured fibre length that also moves torque.
 */
export function predictMuscle(outcome: MuscleOutcome, trained: Trained): Prediction {
  const each: Changed[] = [];
  for (const name of outcome.muscles) {
    const predicted = ofOne(outcome, name, trained);
    if (predicted.change === undefined) return predicted;
    const area = muscles.find((muscle) => muscle.name === name)?.area.value ?? 1;
    each.push({ change: predicted.change, area });
  }
  const all = each.reduce((sum, { area }) => sum + area, 0);
  return { change: each.reduce((sum, { change, area }) => sum + change * area, 0) / all };
}

function ofOne(outcome: MuscleOutcome, name: string, { state, coefficients }: Trained): Prediction {
  const place = placeOfMuscle(name);
  const [muscle, change] = [trainedMuscles[place], state.changes.muscles[place]];
  if (!muscle || !change) return { because: `the model does not train the ${name}` };
  const grown = growthAt(change, placeOf(outcome));
  if (outcome.kind === 'arm') return { change: armGrowth(muscle.home, grown) };
  if (outcome.kind === 'fibres') return { change: fibreChange(change) };
  if (outcome.measure === 'physiological area') return { change: grown };
  return { change: (1 + grown) * (1 + actingFibre(change, coefficients)) - 1 };
}

/** Where along the muscle it was measured, 0 at the upper end; undefined: all of it. */
function placeOf(outcome: MuscleOutcome): number | undefined {
  if (outcome.kind === 'arm') return undefined;
  const { place, region } = outcome;
  return place ?? (region && { proximal: 0.25, middle: 0.5, distal: 0.75 }[region]);
}

/** Growth at a place: straight between the middles of the two halves. */
function growthAt({ growth: [proximal = 0, distal = 0] }: MuscleChange, place?: number): number {
  const [above = 0.5] = regions.area;
  const share = place === undefined ? 1 - above : Math.min(Math.max((place - 0.25) / 0.5, 0), 1);
  return proximal + share * (distal - proximal);
}
