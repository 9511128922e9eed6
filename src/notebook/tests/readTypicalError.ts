import { dimensionOf } from '../quantity.ts';
import type { Reading } from '../reading.ts';
import type { Path } from '../scenario.ts';
import type { RepeatedTest } from './strengthTest.ts';

type KnownError = Pick<Extract<RepeatedTest, { kind: 'typical error' }>, 'error' | 'from'>;

interface ErrorDraft {
  readonly 'typical error'?: string | undefined;
  readonly from?: string | undefined;
}

const example = { torque: '9 N m', mass: '2.5 kg' } as const;

/**
 * Reads a typical error that the coach knows, and from how many people and days it comes, which
 * says how well it is known.
 *
 * @param dimension of the test's own unit
 * @param path of the entry
 * @returns undefined if it cannot be used; problems are collected, never thrown
 */
export function readTypicalError(
  reading: Reading,
  draft: ErrorDraft,
  dimension: keyof typeof example,
  path: Path,
): KnownError | undefined {
  const error = readError(reading, draft['typical error'], dimension, path);
  const from = readFrom(reading, draft, path);
  return error && from ? { error, from } : undefined;
}

function readError(
  reading: Reading,
  raw: string | undefined,
  dimension: keyof typeof example,
  path: Path,
): KnownError['error'] | undefined {
  const at = [...path, 'typical error'];
  if (raw === undefined) {
    const message = 'typical error is missing; write it as a share or in the unit of the test';
    const hint = `add for example "typical error: 4 %" or "typical error: ${example[dimension]}"`;
    reading.refuse([...path, 'typical error'], { code: 'missing', message, hint });
    return undefined;
  }
  if (dimensionOf(raw, reading.units) === 'share') {
    const bounds = 'the typical error of a strength test lies between 0.2 % and 50 %';
    const share = reading.quantity(at, raw, {
      dimension: 'share',
      least: 0.002,
      most: 0.5,
      bounds,
    });
    return share === undefined ? undefined : { share };
  }
  const bounds = 'a typical error is above 0';
  const value = reading.quantity(at, raw, {
    dimension,
    example: example[dimension],
    least: 1e-6,
    most: 100,
    bounds,
  });
  if (value === undefined) return undefined;
  return dimension === 'torque' ? { torque: value } : { mass: value };
}

function readFrom(
  reading: Reading,
  { from }: ErrorDraft,
  path: Path,
): KnownError['from'] | undefined {
  const hint = 'write for example "from: 10 people × 2 days"';
  if (from === undefined) {
    const message = 'from is missing; how well a typical error is known depends on people and days';
    reading.refuse([...path, 'from'], { code: 'missing', message, hint });
    return undefined;
  }
  const said =
    /^\s*(\d{1,4})\s*(?:people|person|persons|athletes?)\s*[x×*]\s*(\d{1,3})\s*days?\s*$/i;
  const [, people = '', days = ''] = said.exec(from) ?? [];
  const found = { people: Number(people), days: Number(days) };
  if (found.people >= 1 && found.days >= 2) return found;
  const message =
    found.days === 1
      ? `from is "${from}"; one day tells nothing about how days differ`
      : `from is "${from}"; it is people and days`;
  reading.refuse([...path, 'from'], { code: 'bad-value', message, hint });
  return undefined;
}
