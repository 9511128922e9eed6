import { meanTorque, type Scales } from '../physiology/athlete.ts';
import { actionNames } from '../tables/actions.ts';
import type { MeasuredAction } from './fitScales.ts';

/** A tested torque beside what the fitted curve gives at its angle, N·m, one side. */
export interface FittedTest {
  readonly action: string;
  readonly deg: number;
  readonly measured: number;
  readonly fitted: number;
}

/** Isometric tests of the actions other than knee extension beside their scaled curves. */
export function fittedTests(
  reference: 'female' | 'male' | 'pooled',
  bodyMass: number,
  measured: readonly MeasuredAction[],
  scales: Scales,
): FittedTest[] {
  return actionNames.flatMap((action) => {
    if (action === 'knee extension') return [];
    const scale = scales[action] ?? 1;
    return measured
      .filter((point) => point.action === action)
      .map(({ deg, torque }) => ({
        action,
        deg,
        measured: torque,
        fitted: scale * meanTorque(action, reference, bodyMass, deg),
      }));
  });
}
