import type { AskedAthlete } from './askedAthlete.ts';
import { liftFunctions } from './liftFunctions.ts';
import type { ModelFunction } from './modelFunction.ts';
import { muscleFunctions } from './muscleFunctions.ts';
import { strengthFunctions } from './strengthFunctions.ts';

/** Names of the functions below: what they ask is known before any program. */
export const athleteCalls: readonly string[] = [
  'torque',
  'peak',
  'peak_angle',
  'angles',
  'segment',
  'best',
  'sticking',
  'demand',
  'effort',
  'lever',
  'tendon_arm',
  'fibre_length',
];

/** What formulas may ask of the athlete before training. */
export function athleteFunctions(results: AskedAthlete): readonly ModelFunction[] {
  return [...strengthFunctions(results), ...liftFunctions(results), ...muscleFunctions(results)];
}
