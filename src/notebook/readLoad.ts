import { dimensionOf } from './quantity.ts';
import { oneOfRange, reserveHint } from './quantitySlips.ts';
import type { Expected, Reading } from './reading.ts';
import type { Load, Path } from './scenario.ts';

const mass: Expected = {
  dimension: 'mass',
  example: '70 kg',
  least: 0.1,
  most: 600,
  bounds: 'a load lies above 0 kg and below 600 kg',
};
const share: Expected = {
  dimension: 'share',
  example: '80 %',
  least: 1e-6,
  most: 1,
  bounds: 'a load lies above 0 % and up to 100 % of the best single repetition',
};
/** Lowered only, more than the best single can be handled (105–125 % is common practice). */
const loweredShare: Expected = {
  ...share,
  most: 1.5,
  bounds: 'a load that is lowered lies above 0 % and up to 150 % of the best single repetition',
};
const mostRepetitions = 50;

interface LoadDraft {
  readonly load?: string | undefined;
  readonly reserve?: number | undefined;
  readonly reps?: number | undefined;
}

/**
 * Reads how heavy work is: exactly one of `load` and `reserve`.
 *
 * @param how.written the names that stand in the file, also those whose values were refused
 * @param how.lowered nothing is lifted, so that more than the best single is possible
 * @param path of the work
 * @returns the load, or undefined; problems are collected, never thrown
 */
export function readLoad(
  reading: Reading,
  work: LoadDraft,
  { written, lowered }: { readonly written: readonly string[]; readonly lowered: boolean },
  path: Path,
): Load | undefined {
  const [hasLoad, hasReserve] = [written.includes('load'), written.includes('reserve')];
  if (hasLoad && hasReserve) {
    const message = 'work has both load and reserve; either one says how heavy it is';
    const hint = 'delete one of the two';
    reading.refuse([...path, 'reserve'], { code: 'two-loads', message, hint, key: true });
  }
  if (!hasLoad && !hasReserve) {
    const message = 'work has no load';
    const hint = lowered
      ? 'write load: 100 % (of the heaviest single), load: 70 kg or load: body weight'
      : 'write load: 80 %, load: 70 kg, load: 8 RM, or reserve: 2 (repetitions left)';
    reading.refuse(path, { code: 'no-load', message, hint });
  }
  if (work.load !== undefined)
    return readWrittenLoad(reading, work.load, lowered ? undefined : work.reps, path, lowered);
  return work.reserve === undefined ? undefined : { kind: 'reserve', reps: work.reserve };
}

function readWrittenLoad(
  reading: Reading,
  raw: string,
  reps: number | undefined,
  path: Path,
  lowered: boolean,
): Load | undefined {
  const at = [...path, 'load'];
  const reserve = reserveHint(raw);
  if (reserve !== undefined) {
    const message = `load is "${raw}"; that says how many repetitions are left, not how heavy the weight is`;
    reading.refuse(at, { code: 'bad-load', message, hint: reserve });
    return undefined;
  }
  const maximum = /^\s*(\S.*?)\s*RM\s*$/i.exec(raw)?.[1];
  if (maximum !== undefined) return repetitionMaximum(reading, maximum, reps, at);
  const dimension = dimensionOf(raw, reading.units);
  if (dimension === 'share') {
    const value = reading.quantity(at, raw, lowered ? loweredShare : share);
    return value === undefined ? undefined : { kind: 'share', share: value };
  }
  const bare = /^\s*(\d+),(\d+)\s*$/.exec(raw);
  if (bare) {
    const number = `${bare[1]}.${bare[2]}`;
    const message = 'load has a decimal comma and no unit';
    const hint = `write "${number} %" or "${number} kg"`;
    reading.refuse(at, { code: 'bad-number', message, hint });
    return undefined;
  }
  if (dimension === 'mass' || /\d,\d/.test(raw)) {
    const value = reading.quantity(at, raw, mass);
    return value === undefined ? undefined : { kind: 'mass', mass: value };
  }
  const message = `load is "${raw}"; write a share ("80 %"), a mass ("70 kg") or a repetition maximum ("8 RM")`;
  const one = oneOfRange(raw);
  const hint = one && { hint: `write one number with its unit, for example "${one} %"` };
  reading.refuse(at, { code: 'bad-load', message, ...(hint || {}) });
  return undefined;
}

function repetitionMaximum(
  reading: Reading,
  written: string,
  reps: number | undefined,
  path: Path,
): Load | undefined {
  const most = Number(written);
  if (!Number.isInteger(most) || most < 1 || most > mostRepetitions) {
    const message = `load is ${written} RM; write a whole number from 1 to ${mostRepetitions}, for example "8 RM"`;
    const one = oneOfRange(written);
    const hint = one && { hint: `write one number, for example "${one} RM"` };
    reading.refuse(path, { code: 'bad-load', message, ...(hint || {}) });
    return undefined;
  }
  if (reps !== undefined && reps > most) {
    const message = `load is ${most} RM, a weight that can be lifted ${most} times, but reps is ${reps}`;
    reading.refuse(path, { code: 'too-many-reps', message });
  }
  return { kind: 'repetition maximum', reps: most };
}
