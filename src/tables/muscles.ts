import { elbowExtensors, elbowFlexors } from './armMuscles.ts';
import { calf, hamstrings, hipMuscles, kneeExtensors } from './legMuscles.ts';
import type { Muscle } from './muscleRow.ts';

/** Every muscle of the tables, one side of the body. */
export const muscles: readonly Muscle[] = [
  ...hipMuscles,
  ...hamstrings,
  ...kneeExtensors,
  ...calf,
  ...elbowFlexors,
  ...elbowExtensors,
];
