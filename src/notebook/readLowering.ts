import type { Lift } from '../mechanics/lift.ts';
import { carriesBody } from '../tables/bodyLifts.ts';
import { dimensionOf } from './quantity.ts';
import type { Expected, Reading } from './reading.ts';
import type { LiftWork, Load, Path } from './scenario.ts';

const more: Expected = {
  dimension: 'share',
  example: '+20 %',
  least: 0.01,
  most: 1,
  bounds: 'what is added on the way down lies between +1 % and +100 % of what is lifted',
};
const mass: Expected = {
  dimension: 'mass',
  example: '100 kg',
  least: 0.1,
  most: 600,
  bounds: 'a load lies above 0 kg and below 600 kg',
};

interface LoweringDraft {
  readonly lift?: string | undefined;
  readonly 'lower only'?: 'yes' | 'no' | boolean | undefined;
  readonly 'lowering load'?: string | undefined;
  readonly load?: string | undefined;
}

/** Whether work is written as lowered only; never throws. */
export function isLowerOnly(work: LoweringDraft): boolean {
  const written = work['lower only'];
  return written === 'yes' || written === true;
}

/**
 * Reads the heavier load of the way down.
 *
 * @param path of the work
 * @returns the load, or undefined if there is none or it cannot be used; problems are collected,
 *   never thrown
 */
export function readLoweringLoad(
  reading: Reading,
  work: LoweringDraft,
  path: Path,
): LiftWork['loweringLoad'] {
  const raw = work['lowering load'];
  if (raw === undefined) return undefined;
  const at = [...path, 'lowering load'];
  if (isLowerOnly(work)) {
    const message =
      'work has both lower only and lowering load; with nothing lifted there is one load';
    const hint = 'write it as load, and delete lowering load';
    reading.refuse(at, { code: 'two-loads', message, hint, key: true });
    return undefined;
  }
  const dimension = dimensionOf(raw, reading.units);
  if (dimension === 'mass') {
    const value = reading.quantity(at, raw, mass);
    return value === undefined ? undefined : { kind: 'mass', mass: value };
  }
  if (dimension === 'share' && raw.trim().startsWith('+')) {
    const value = reading.quantity(at, raw, more);
    return value === undefined ? undefined : { kind: 'more', share: value };
  }
  const message = `lowering load is "${raw}"; write how much more than is lifted ("+20 %") or a mass ("100 kg")`;
  const hint = hintFor(raw);
  reading.refuse(at, { code: 'bad-lowering-load', message, ...(hint ? { hint } : {}) });
  return undefined;
}

/** A share without its plus: 20 % is the extra, 120 % the whole. */
function hintFor(raw: string): string | undefined {
  const percent = Number(/^\s*(\d+(?:\.\d+)?)\s*%\s*$/.exec(raw)?.[1] ?? Number.NaN);
  if (Number.isNaN(percent) || percent === 100) return undefined;
  return `write "+${Number((percent > 100 ? percent - 100 : percent).toFixed(2))} %"`;
}

/** How a file says that nothing is added to the body. */
const bodyWeight = /^\s*(body\s*-?\s*weight|0(\.0+)?\s*(kg|lbs?|g))\s*$/i;

/** Whether a load or a best says that nothing is added to the body; never throws. */
export const isBodyWeight = (raw: string): boolean => bodyWeight.test(raw);

/**
 * Reads `load: body weight` or `0 kg`, which work of a lift that carries the body may have.
 *
 * @returns no added mass; undefined if the text says something else or was refused; problems are
 *   collected, never thrown
 */
export function readBodyWeight(
  reading: Reading,
  work: LoweringDraft,
  lift: Lift | undefined,
  path: Path,
): { readonly read: Load | undefined } | undefined {
  if (work.load === undefined || !isBodyWeight(work.load)) return undefined;
  if (lift && refuseNoBody(reading, lift, work.load, [...path, 'load'])) return { read: undefined };
  return { read: { kind: 'mass', mass: 0 } };
}

/**
 * Refuses body weight where a lift does not move the body; problems are collected, never thrown.
 *
 * @returns whether it was refused
 */
export function refuseNoBody(reading: Reading, lift: Lift, raw: string, path: Path): boolean {
  if (carriesBody(lift)) return false;
  const moved =
    lift.resistance.kind === 'mass' ? 'a weight on a limb' : "a machine's or a cable's weight";
  const message = `${path.at(-1)} is ${raw.trim()}, but ${lift.name} moves ${moved}`;
  reading.refuse(path, { code: 'bad-load', message, hint: 'write that weight, such as 20 kg' });
  return true;
}

/** Refuses `reserve` and repetition maxima where nothing is lifted; problems are collected, never thrown. */
export function checkLoweredLoad(reading: Reading, work: LoweringDraft, path: Path): void {
  if (!isLowerOnly(work)) return;
  const isMaximum = /^\s*\d+\s*RM\s*$/i.test(work.load ?? '');
  if (!isMaximum && !Object.hasOwn(work, 'reserve')) return;
  const [key, what] = isMaximum
    ? ['load', `${work.load?.trim()} counts repetitions that can be lifted`]
    : ['reserve', 'reserve counts repetitions that could still be lifted'];
  const message = `${what}, but this work is lowered only`;
  const hint = 'write load: 100 % (of the heaviest single), load: 70 kg or load: body weight';
  reading.refuse([...path, key], { code: 'bad-load', message, hint, key: !isMaximum });
}
