import { complete, optional } from '../complete.ts';
import { dimensionOf } from '../quantity.ts';
import type { Expected, Reading } from '../reading.ts';
import type { NewtonMetre, Path } from '../scenario.ts';
import { unitSizes } from '../unitTable.ts';
import type { Measure } from './strengthTest.ts';

interface MeasureDraft {
  readonly unit?: string | undefined;
  readonly 'lever arm'?: string | undefined;
}

/** How to read the numbers of a test. */
export interface ReadMeasure {
  readonly measure: Measure;
  readonly torqueOf: (value: number) => NewtonMetre;
}

const lever: Expected = {
  dimension: 'length',
  example: '36 cm',
  least: 0.05,
  most: 0.8,
  bounds: 'a lever arm on a limb lies between 5 cm and 80 cm',
};

/**
 * Reads what the numbers of a test are: torques, or forces at a lever arm. A mass on a scale is
 * taken as the force of its weight, by standard gravity.
 *
 * @param path of the test
 * @returns undefined if unit or lever arm cannot be used; problems are collected, never thrown
 */
export function readMeasure(
  reading: Reading,
  draft: MeasureDraft,
  path: Path,
): ReadMeasure | undefined {
  const { unit } = draft;
  if (unit === undefined) return undefined;
  const at = [...path, 'unit'];
  const kind = dimensionOf(`1 ${unit}`, reading.units);
  const hasLever = Object.hasOwn(draft, 'lever arm');
  if (kind === 'force' || kind === 'mass') return readForce(reading, draft, unit, kind, path);
  const size = reading.quantity(at, `1 ${unit}`, { dimension: 'torque', example: 'N m' });
  if (size !== undefined && hasLever) refuseLever(reading, unit, path);
  return size === undefined ? undefined : { measure: { unit }, torqueOf: (value) => value * size };
}

function readForce(
  reading: Reading,
  draft: MeasureDraft,
  unit: string,
  kind: 'force' | 'mass',
  path: Path,
): ReadMeasure | undefined {
  const inSi = reading.quantity([...path, 'unit'], `1 ${unit}`, { dimension: kind });
  if (!Object.hasOwn(draft, 'lever arm')) {
    const what = kind === 'mass' ? 'a mass on a scale, so a force' : 'a force';
    const message = `unit is ${unit}, ${what}; a torque needs its lever arm too`;
    const hint =
      'add "lever arm: 36 cm": from the joint to where strap or pad pulls, square to the pull';
    reading.refuse([...path, 'unit'], { code: 'no-lever', message, hint });
    return undefined;
  }
  const raw = draft['lever arm'];
  const length = reading.quantity([...path, 'lever arm'], raw, lever);
  const measure = complete<Measure>({ unit, ...optional('lever', length) });
  if (inSi === undefined || length === undefined || !measure) return undefined;
  const force = kind === 'mass' ? inSi * unitSizes.gravity : inSi;
  return { measure, torqueOf: (value) => value * force * length };
}

function refuseLever(reading: Reading, unit: string, path: Path): void {
  const message = `unit is ${unit}, a torque, and there is a lever arm; a torque has its lever arm in it`;
  const hint =
    'delete lever arm; or, if the device showed a force, write its unit: N, kg, lbf or kgf';
  reading.refuse([...path, 'lever arm'], { code: 'lever-of-torque', message, hint, key: true });
}
