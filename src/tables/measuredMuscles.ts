import { elbowFlexors } from './armMuscles.ts';
import { hamstrings, kneeExtensors } from './legMuscles.ts';
import { muscles } from './muscles.ts';

const namesOf = (rows: readonly { readonly name: string }[]) => rows.map(({ name }) => name);

/** Muscles that studies measure together, in their words → rows of the muscle tables. */
const together = {
  quadriceps: namesOf(kneeExtensors),
  'front of the thigh': namesOf(kneeExtensors),
  hamstrings: namesOf(hamstrings),
  'back of the thigh': namesOf(hamstrings),
  calf: ['gastrocnemius medialis', 'gastrocnemius lateralis', 'soleus'],
  'elbow flexors': namesOf(elbowFlexors),
  triceps: ['triceps long head', 'triceps lateral head', 'triceps medial head'],
  'triceps lateral and medial heads': ['triceps lateral head', 'triceps medial head'],
  // Of the adductors the tables have the largest only.
  adductors: ['adductor magnus'],
} as const satisfies Readonly<Record<string, readonly string[]>>;

/**
 * What size and fibre length are measured of: one muscle of the tables or several together.
 * Front and back of the thigh are read as their largest part, knee extensors and hamstrings.
 */
export const measuredMuscles: ReadonlyMap<string, readonly string[]> = new Map([
  ...Object.entries(together),
  ...muscles.map(({ name }): [string, readonly string[]] => [name, [name]]),
]);
