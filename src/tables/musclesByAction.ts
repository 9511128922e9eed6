import type { ActionName } from './actions.ts';
import { elbowExtensors, elbowFlexors } from './armMuscles.ts';
import { calf, hamstrings, kneeExtensors } from './legMuscles.ts';

const namesOf = (rows: readonly { readonly name: string }[]) => rows.map(({ name }) => name);

/**
 * The action whose training a muscle's growth is read from. A muscle over two joints stands at the
 * one where studies train it; that its other joint decides its length is left out.
 */
const listed: readonly (readonly [ActionName, readonly string[]])[] = [
  ['knee extension', namesOf(kneeExtensors)],
  ['knee flexion', namesOf(hamstrings)],
  ['ankle plantarflexion', namesOf(calf)],
  ['elbow flexion', namesOf(elbowFlexors)],
  ['elbow extension', namesOf(elbowExtensors)],
  ['hip extension', ['gluteus maximus', 'adductor magnus']],
];

/** The action of a muscle, if the model has one for it. */
export function actionOfMuscle(name: string): ActionName | undefined {
  return listed.find(([, names]) => names.includes(name))?.[0];
}
