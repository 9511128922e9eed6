import { complete } from './complete.ts';
import { distinctAngles } from './distinctAngles.ts';
import type { Draft } from './draft.ts';
import type { Expected, Reading } from './reading.ts';
import { readNamed } from './readNamed.ts';
import type { Machine, Path } from './scenario.ts';
import type { MachineFile } from './schema.ts';
import { valueAt } from './schemaAt.ts';

const load: Expected = {
  dimension: 'mass',
  example: '40 kg',
  least: 0.1,
  most: 600,
  bounds: 'a weight lies above 0 kg and below 600 kg',
};
const torque: Expected = {
  dimension: 'torque',
  example: '70 N m',
  least: 0,
  most: 2000,
  bounds: 'a machine makes between 0 and 2000 N m',
};

/**
 * Reads the machines that the coach measured.
 *
 * @returns name → machine, those that could be read; problems are collected, never thrown
 */
export function readMachines(
  reading: Reading,
  machines: Readonly<Record<string, Draft<MachineFile>>> | undefined,
): Readonly<Record<string, Machine>> {
  return readNamed(machines, 'machines', (draft, path) => readMachine(reading, draft, path));
}

function readMachine(
  reading: Reading,
  draft: NonNullable<Draft<MachineFile>>,
  path: Path,
): Machine | undefined {
  // A joint that is written wrongly is reported; its angles are then only checked for their unit.
  const isWritten = valueAt(reading.source.value, [...path, 'joint']) !== undefined;
  const joint = draft.joint ?? (isWritten ? undefined : 'knee');
  const torquePath = [...path, 'torque'];
  const entries = Object.entries(draft.torque ?? {});
  if (draft.torque && entries.length < 2) {
    const message = 'torque has fewer than two angles; a machine is measured at two or more';
    reading.refuse(torquePath, { code: 'too-few-angles', message, key: true });
  }
  const points = entries.flatMap(([name, raw]) => {
    const at = [...torquePath, name];
    const angle = reading.angle(at, name, joint, { key: true });
    const value = reading.quantity(at, raw, torque);
    return angle === undefined || value === undefined ? [] : [{ angle, torque: value, path: at }];
  });
  const sorted = distinctAngles(reading, points, torquePath);
  return complete<Machine>({
    joint,
    load: reading.quantity([...path, 'load'], draft.load, load),
    points: sorted.map(({ angle, torque: value }) => ({ angle, torque: value })),
    path,
  });
}
