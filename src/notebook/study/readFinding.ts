import { toRadians } from '../../numeric/degrees.ts';
import type { Expected, Reading } from '../reading.ts';
import type { Path } from '../scenario.ts';
import type { Finding, Spread } from './study.ts';

interface Written {
  readonly change?: string | undefined;
  readonly found?: Extract<Finding, { kind: 'direction' }>['direction'] | undefined;
  readonly sd?: string | undefined;
  readonly se?: string | undefined;
  readonly spread?: string | undefined;
}

type Kind = 'share' | 'angle';

const changes: Readonly<Record<Kind, Expected>> = {
  share: {
    dimension: 'share',
    example: '12 %',
    least: -0.9,
    most: 3,
    bounds: 'a change lies between -90 % and 300 %',
  },
  angle: {
    dimension: 'angle',
    example: '5 deg',
    least: toRadians(-60),
    most: toRadians(60),
    bounds: 'the strongest angle moves by at most 60 deg',
  },
};

/**
 * Reads what was found: a change with its spread, or only which way it went.
 *
 * @param kind what the change is given in: a share of the value before, or an angle
 * @returns SI, or undefined; problems are collected, never thrown
 */
export function readFinding(
  reading: Reading,
  written: Written,
  path: Path,
  kind: Kind,
): Finding | undefined {
  const has = (name: keyof Written) => Object.hasOwn(written, name);
  if (has('change') === has('found')) {
    const message = has('found')
      ? 'found stands beside change; a size says which way it went'
      : 'change is missing; write what was found';
    const hint = has('found') ? 'delete found' : 'change: 12 %, or found: clear rise';
    reading.refuse(has('found') ? [...path, 'found'] : path, {
      code: has('found') ? 'two-findings' : 'missing',
      message,
      hint,
      key: true,
    });
    return undefined;
  }
  if (has('found')) return written.found && { kind: 'direction', direction: written.found };
  const change = reading.quantity([...path, 'change'], written.change, changes[kind]);
  const spread = readSpread(reading, written, path, kind);
  return change === undefined || !spread ? undefined : { kind: 'size', change, spread };
}

function readSpread(
  reading: Reading,
  written: Written,
  path: Path,
  kind: Kind,
): Spread | undefined {
  const given = (['sd', 'se', 'spread'] as const).filter((name) => Object.hasOwn(written, name));
  const [name, second] = given;
  if (name === undefined || second !== undefined) {
    const message =
      name === undefined
        ? 'the change has no spread; write sd: or se: as in the source, or spread: unknown'
        : `${second} stands beside ${name}; a change has one spread`;
    const hint = name === undefined ? undefined : `keep ${name}: or ${second}:`;
    reading.refuse(second === undefined ? path : [...path, second], {
      code: second === undefined ? 'no-spread' : 'two-spreads',
      message,
      key: second !== undefined,
      ...(hint === undefined ? {} : { hint }),
    });
    return undefined;
  }
  if (name === 'spread') return written.spread === undefined ? undefined : { kind: 'unknown' };
  const expected = { ...changes[kind], least: 0, bounds: 'a spread is not below 0' };
  const value = reading.quantity([...path, name], written[name], expected);
  return value === undefined ? undefined : { kind: name, value };
}
