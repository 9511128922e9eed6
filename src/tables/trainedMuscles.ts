import { type ActionName, actionNames, actions } from './actions.ts';
import { elbowExtensors, elbowFlexors } from './armMuscles.ts';
import { calf, hamstrings, hipMuscles, kneeExtensors } from './legMuscles.ts';
import type { Muscle } from './muscleRow.ts';
import { muscles } from './muscles.ts';

/** What training changes: a muscle of the tables, or all that turn a joint for which they have none. */
export interface TrainedMuscle {
  readonly name: string;
  /**
   * The action by whose joint its length is told. A muscle over two joints stands at the one where
   * studies train it; the other joint makes it longer or shorter than there.
   */
  readonly home: ActionName;
  readonly row?: Muscle;
}

const homes: readonly (readonly [ActionName, readonly Muscle[]])[] = [
  ['knee extension', kneeExtensors],
  ['knee flexion', hamstrings],
  ['ankle plantarflexion', calf],
  ['elbow flexion', elbowFlexors],
  ['elbow extension', elbowExtensors],
  ['hip extension', hipMuscles.filter(({ name }) => /gluteus|adductor/.test(name))],
  ['hip flexion', hipMuscles.filter(({ name }) => /psoas|iliacus/.test(name))],
];

const homeOf = (row: Muscle): ActionName => {
  const found = homes.find(([, rows]) => rows.includes(row));
  if (!found) throw new Error(`${row.name} has no action`);
  return found[0];
};

/** Those of the tables in their order, then one for every action without any. */
export const trainedMuscles: readonly TrainedMuscle[] = [
  ...muscles.map((row) => ({ name: row.name, home: homeOf(row), row })),
  ...actionNames
    .filter((action) => !homes.some(([home]) => home === action))
    .map((action) => ({ name: actions[action].muscles, home: action })),
];

/** Place of a muscle in that list, −1 if it has none. */
export function placeOfMuscle(name: string): number {
  return trainedMuscles.findIndex((muscle) => muscle.name === name);
}
