/** The parts of a declared lift: each read alone, in SI and in the form of the catalogue. */
import type {
  Attachment,
  ChainLink,
  Contact,
  FollowRule,
  Lift,
  Resistance,
} from '../mechanics/lift.ts';
import { toDegrees, toRadians } from '../numeric/degrees.ts';
import { complete, optional } from './complete.ts';
import type { Draft } from './draft.ts';
import type { DeclaredLiftFile } from './liftSchema.ts';
import type { Expected, Reading } from './reading.ts';
import type { Path } from './scenario.ts';

type LiftDraft = NonNullable<Draft<DeclaredLiftFile>>;
type Part<Name extends 'chain' | 'follow'> = NonNullable<NonNullable<LiftDraft[Name]>[number]>;
type ResistanceDraft = NonNullable<LiftDraft['resistance']>;
type ContactDraft = NonNullable<LiftDraft['contact']>;

const direction: Expected = {
  dimension: 'angle',
  example: '90 deg',
  least: toRadians(-360),
  most: toRadians(360),
  bounds: 'a direction lies between -360 and 360 deg',
};
/** No part of a gym is farther off; a larger number is in another unit. */
const length: Expected = {
  dimension: 'length',
  example: '5 cm',
  least: -5,
  most: 5,
  bounds: 'a place on a lift lies within 5 m',
};

/** Nearer bounds: beside a body segment, and for a weight below hands or belt a high bar's height. */
const nearer: Readonly<Record<string, Expected>> = {
  across: {
    ...length,
    least: -1,
    most: 1,
    bounds: 'a place beside a body segment lies within 1 m of it',
  },
  below: { ...length, least: 0, most: 2.5, bounds: 'a weight hangs at most 2.5 m below' },
};

/** Fields each rule needs and may have, and the same for each kind of resistance. */
const ruleFields = {
  balance: [[]],
  'leveling off': [['per leading', 'most']],
  linear: [['from', 'per leading']],
  direction: [['direction']],
  'end on line': [['direction'], ['across']],
} as const;
const resistanceFields = {
  mass: [['on', 'along', 'across'], ['below']],
  'machine torque': [['arm']],
  force: [['on', 'along', 'across', 'direction', 'gain']],
  cable: [['on', 'along', 'across', 'pulley forward', 'pulley up']],
} as const;

/** The chain of segments; problems are collected, never thrown. */
export function readChain(
  reading: Reading,
  draft: LiftDraft['chain'],
  path: Path,
): readonly ChainLink[] | undefined {
  return whole(draft, (link: Part<'chain'>, index) => {
    const { segment, joint, near, turn } = link;
    const offset = degrees(reading, link, 'offset', [...path, index]);
    if (Object.hasOwn(link, 'offset') && offset === undefined) return undefined;
    return complete<ChainLink>({ segment, joint, near, turn, ...optional('offsetDeg', offset) });
  });
}

/** The rules by which joints follow; problems are collected, never thrown. */
export function readFollow(
  reading: Reading,
  draft: LiftDraft['follow'],
  path: Path,
): readonly FollowRule[] | undefined {
  return whole(draft, (rule: Part<'follow'>, index) => readRule(reading, rule, [...path, index]));
}

function readRule(reading: Reading, draft: Part<'follow'>, path: Path): FollowRule | undefined {
  const { joint, rule } = draft;
  if (rule === undefined || joint === undefined) return undefined;
  if (!hasFields(reading, draft, path, rule, ruleFields[rule])) return undefined;
  const perLeading = draft['per leading'];
  const angle = (name: 'from' | 'most') =>
    inDegrees(reading.angle([...path, name], draft[name], joint));
  const deg = degrees(reading, draft, 'direction', path);
  switch (rule) {
    case 'balance':
      return { joint, rule };
    case 'leveling off':
      return complete<FollowRule>({ joint, rule, perLeading, mostDeg: angle('most') });
    case 'linear':
      return complete<FollowRule>({ joint, rule, fromDeg: angle('from'), perLeading });
    case 'direction':
      return complete<FollowRule>({ joint, rule, deg });
    case 'end on line': {
      const across = metres(reading, draft, 'across', path);
      return complete<FollowRule>({ joint, rule, deg, ...optional('across', across) });
    }
  }
}

/** What resists; problems are collected, never thrown. */
export function readResistance(
  reading: Reading,
  draft: ResistanceDraft | undefined,
  path: Path,
): Resistance | undefined {
  const kind = draft?.kind;
  if (!draft || !kind || !hasFields(reading, draft, path, kind, resistanceFields[kind]))
    return undefined;
  const place = {
    on: draft.on,
    along: draft.along,
    across: metres(reading, draft, 'across', path),
  };
  switch (kind) {
    case 'machine torque':
      return complete<Resistance>({ kind, arm: metres(reading, draft, 'arm', path) });
    case 'mass': {
      const below = metres(reading, draft, 'below', path);
      return complete<Resistance>({ kind, ...place, ...optional('below', below) });
    }
    case 'force':
      return complete<Resistance>({
        kind,
        ...place,
        deg: degrees(reading, draft, 'direction', path),
        gain: draft.gain,
      });
    case 'cable':
      return complete<Resistance>({
        kind,
        ...place,
        x: metres(reading, draft, 'pulley forward', path),
        y: metres(reading, draft, 'pulley up', path),
      });
  }
}

/** A second support; problems are collected, never thrown. */
export function readContact(
  reading: Reading,
  draft: ContactDraft | undefined,
  path: Path,
): Contact | undefined {
  if (!draft) return undefined;
  const { on, along } = draft;
  const across = metres(reading, draft, 'across', path);
  const attachment = complete<Attachment>({ on, along, across });
  const deg = degrees(reading, draft, 'direction', path);
  return attachment && deg !== undefined ? { ...attachment, deg } : undefined;
}

/** Where the floor is for chains and bands; problems are collected, never thrown. */
export function readAboveFloor(
  reading: Reading,
  draft: LiftDraft['above floor'],
  path: Path,
): Lift['aboveFloor'] {
  if (!draft) return undefined;
  const isShoulder = draft.height?.trim() === standingShoulder;
  const height = isShoulder
    ? undefined
    : reading.quantity([...path, 'height'], draft.height, length);
  return complete<NonNullable<Lift['aboveFloor']>>({
    metres: isShoulder ? 'shoulder of someone standing' : height,
    assumed: draft.assumed,
  });
}

/** How a file names the one height that goes by the athlete's own build. */
const standingShoulder = 'standing shoulder';

/** A direction in space in degrees; never turned round by the file's convention. */
export function readDirection(
  reading: Reading,
  raw: string | undefined,
  path: Path,
): number | undefined {
  return inDegrees(reading.quantity(path, raw, direction));
}

/** Degrees without the dust of going through radians: 180 and not 180.00000000000003. */
export function inDegrees(angle: number | undefined): number | undefined {
  return angle === undefined ? undefined : Number(toDegrees(angle).toFixed(9));
}

function degrees<Name extends string>(
  reading: Reading,
  draft: { readonly [Key in Name]?: string | undefined },
  name: Name,
  path: Path,
): number | undefined {
  return readDirection(reading, draft[name], [...path, name]);
}

function metres<Name extends string>(
  reading: Reading,
  draft: { readonly [Key in Name]?: string | undefined },
  name: Name,
  path: Path,
): number | undefined {
  return reading.quantity([...path, name], draft[name], nearer[name] ?? length);
}

/** A list without holes, or undefined. */
function whole<From, To>(
  draft: readonly (From | undefined)[] | undefined,
  read: (item: From, index: number) => To | undefined,
): readonly To[] | undefined {
  const items = draft?.map((item, index) => (item === undefined ? undefined : read(item, index)));
  const found = items?.filter((item) => item !== undefined);
  return found?.length === items?.length ? found : undefined;
}

/** Refuses fields that a rule or a kind of resistance lacks or does not take. */
function hasFields(
  reading: Reading,
  draft: object,
  path: Path,
  kind: string,
  [needed, allowed = []]: readonly [readonly string[], (readonly string[])?],
): boolean {
  const known: readonly string[] = ['joint', 'rule', 'kind', ...needed, ...allowed];
  const missing = needed.filter((name) => !Object.hasOwn(draft, name));
  const surplus = Object.keys(draft).filter((name) => !known.includes(name));
  const wants = [...needed, ...allowed.map((name) => `${name} (if any)`)].join(', ');
  for (const name of missing) {
    const message = `"${kind}" needs ${name}, which is missing`;
    reading.refuse(path, { code: 'missing', message, hint: `it takes: ${wants}` });
  }
  for (const name of surplus) {
    const message = `"${kind}" takes no ${name}`;
    const hint = wants === '' ? `delete ${name}` : `it takes: ${wants}`;
    reading.refuse([...path, name], { code: 'unknown-key', message, hint, key: true });
  }
  return missing.length + surplus.length === 0;
}
