import type { Lift } from '../mechanics/lift.ts';
import { actions } from '../tables/actions.ts';
import { lifts as catalogue } from '../tables/lifts.ts';
import { checkLift } from './checkLift.ts';
import { complete, optional } from './complete.ts';
import type { Draft } from './draft.ts';
import { actionNames, liftNames } from './knownNames.ts';
import { liftNameHint } from './liftNameHint.ts';
import type { DeclaredLiftFile } from './liftSchema.ts';
import type { Expected, Reading } from './reading.ts';
import {
  inDegrees,
  readAboveFloor,
  readChain,
  readContact,
  readDirection,
  readFollow,
  readResistance,
} from './readLiftParts.ts';
import type { Path } from './scenario.ts';

type LiftDraft = NonNullable<Draft<DeclaredLiftFile>>;
type Parts = { -readonly [Key in keyof Lift]?: Lift[Key] | undefined };

/** Lifts by name that a file may use; one that was declared wrongly is known but undefined. */
export type KnownLifts = ReadonlyMap<string, Lift | undefined>;

const share: Expected = {
  dimension: 'share',
  example: '70 %',
  least: 0.05,
  most: 1,
  bounds: 'a working share lies between 5 % and 100 %',
};

/** Parts that the file calls otherwise than the code. */
const words: Readonly<Record<string, string>> = {
  supportDirectionDeg: 'support direction',
  workingShare: 'working share',
  freeLeg: 'free leg',
  aboveFloor: 'above floor',
  leading: 'leads',
  rangeDeg: 'range',
};
/** What a lift cannot do without. */
const needed = [
  'chain',
  'support',
  'supportDirectionDeg',
  'sides',
  'leading',
  'rangeDeg',
  'resistance',
] as const;

/**
 * Reads the lifts that the coach declares, in the form of the catalogue.
 *
 * @returns the catalogue's lifts and the file's own by name; problems are collected, never thrown
 */
export function readLifts(
  reading: Reading,
  declared: Readonly<Record<string, Draft<DeclaredLiftFile>>> | undefined,
): KnownLifts {
  const known = new Map<string, Lift | undefined>(catalogue.map((lift) => [lift.name, lift]));
  for (const [name, draft] of Object.entries(declared ?? {})) {
    const path: Path = ['lifts', name];
    if (actionNames.includes(name)) {
      const message = `"${name}" is a joint action, which a hold may name`;
      const hint = `call the lift otherwise, for example "${name} of ours"`;
      reading.refuse(path, { code: 'name-taken', message, hint, key: true });
    } else if (liftNames.includes(name)) {
      const message = `"${name}" is a lift of the catalogue`;
      const hint = `call yours otherwise, for example "${name} of ours", and write like: ${name}`;
      reading.refuse(path, { code: 'name-taken', message, hint, key: true });
    } else known.set(name, draft && readLift(reading, name, draft, path));
  }
  return known;
}

/** The lifts among those known that a file declared; never throws. */
export function declaredLifts(known: KnownLifts): readonly Lift[] {
  return [...known.values()].flatMap((lift) => (lift && !catalogue.includes(lift) ? [lift] : []));
}

/**
 * The lift that work or a test names.
 *
 * @param others names that would be right without being a lift
 * @returns undefined if there is none, which is a problem, or none that can be used
 */
export function namedLift(
  reading: Reading,
  name: string | undefined,
  path: Path,
  known: KnownLifts,
  others: readonly string[] = [],
): Lift | undefined {
  if (name === undefined || known.has(name) || others.includes(name)) return known.get(name ?? '');
  const names = [...others, ...known.keys()];
  const kind = others.length > 0 ? 'joint action or lift' : 'lift';
  const message = `${path.at(-1)} is "${name}"; there is no such ${kind}`;
  reading.refuse(path, { code: 'bad-value', message, hint: liftNameHint(name, names) });
  return undefined;
}

function readLift(reading: Reading, name: string, draft: LiftDraft, path: Path): Lift | undefined {
  const base = catalogue.find((lift) => lift.name === draft.like);
  const own = ownParts(reading, draft, path, base);
  if (Object.hasOwn(draft, 'like') && !base) {
    refuseLike(reading, draft.like, [...path, 'like']);
    return undefined;
  }
  const {
    assumed = [],
    freeLeg,
    ...parts
  }: Parts = {
    follow: [],
    source: unsourced,
    ...base,
    ...own,
  };
  const missing = needed
    .filter((key) => !Object.hasOwn(parts, key))
    .map((key) => words[key] ?? key);
  if (missing.length > 0) {
    const message = `the lift "${name}" lacks ${missing.join(', ')}`;
    const hint = 'add what is missing, or write like: and a lift of the catalogue to start from';
    reading.refuse(path, { code: 'missing', message, hint, key: true });
    return undefined;
  }
  const lift = complete<Lift>({
    ...parts,
    name,
    chain: parts.chain,
    supportDirectionDeg: parts.supportDirectionDeg,
    support: parts.support,
    sides: parts.sides,
    leading: parts.leading,
    rangeDeg: parts.rangeDeg,
    follow: parts.follow,
    resistance: parts.resistance,
    assumed: [origin(draft), ...assumed],
    source: parts.source,
    ...optional('freeLeg', freeLeg),
  });
  if (!lift || !checkLift(reading, lift, path)) return undefined;
  remarkOnArm(reading, lift, base, path);
  return lift;
}

/**
 * A machine that takes the place of another weight says by the sign of its arm which muscles it
 * works: easily the wrong ones.
 */
function remarkOnArm(reading: Reading, lift: Lift, base: Lift | undefined, path: Path): void {
  const { resistance, leading, name } = lift;
  if (resistance.kind !== 'machine torque' || !base) return;
  const before = base.resistance;
  if (before.kind === 'machine torque' && before.arm * resistance.arm > 0) return;
  const sense = resistance.arm > 0 ? 1 : -1;
  const worked = Object.values(actions).find((one) => one.joint === leading && one.sense === sense);
  const action = worked ? `the ${worked.muscles}` : `no muscles that are known at the ${leading}`;
  const cm = Math.round(100 * resistance.arm);
  const message = `with an arm of ${cm} cm the machine of "${name}" works ${action}`;
  const hint = `if it works those of the other side, as may the ${base.name}, write arm: ${-cm} cm`;
  reading.remark([...path, 'resistance', 'arm'], { code: 'machine-sense', message, hint });
}

const unsourced = 'the scenario it is declared in';

/** The parts that stand in the file; one that cannot be used is there but undefined. */
function ownParts(reading: Reading, draft: LiftDraft, path: Path, base: Lift | undefined): Parts {
  const at = (name: keyof LiftDraft): Path => [...path, name];
  const read: Parts = {
    chain: readChain(reading, draft.chain, at('chain')),
    support: draft.support,
    supportDirectionDeg: readDirection(
      reading,
      draft['support direction'],
      at('support direction'),
    ),
    sides: draft.sides,
    workingShare: reading.quantity(at('working share'), draft['working share'], share),
    freeLeg: draft['free leg'] || undefined,
    leading: draft.leads,
    rangeDeg: readEnds(reading, draft, at('range'), draft.leads ?? base?.leading),
    follow: readFollow(reading, draft.follow, at('follow')),
    resistance: readResistance(reading, draft.resistance, at('resistance')),
    contact: readContact(reading, draft.contact, at('contact')),
    aboveFloor: readAboveFloor(reading, draft['above floor'], at('above floor')),
    assumed: draft.assumed?.filter((text) => text !== undefined),
    source: draft.source,
  };
  const isWritten = ([key]: readonly [string, unknown]) => Object.hasOwn(draft, words[key] ?? key);
  return Object.fromEntries(Object.entries(read).filter(isWritten));
}

/** Ends in degrees by rising flexion; a file with included angles may write either first. */
function readEnds(
  reading: Reading,
  { range }: LiftDraft,
  path: Path,
  joint = 'hip',
): Lift['rangeDeg'] | undefined {
  const [first, last] = (range ?? []).map((raw, i) =>
    inDegrees(reading.angle([...path, i], raw, joint)),
  );
  if (first === undefined || last === undefined) return undefined;
  return reading.convention === 'included' && first > last ? [last, first] : [first, last];
}

/** Says in the report that the lift is the coach's and what differs from its model. */
function origin(draft: LiftDraft): string {
  if (draft.like === undefined) return 'A lift of the coach’s own, declared in the scenario.';
  const changed = Object.keys(draft).filter((key) => !['like', 'assumed', 'source'].includes(key));
  const but = changed.length > 0 ? ` with its own ${listed(changed)}` : '';
  return `A lift of the coach’s own: the ${draft.like}${but}; the rest is assumed as there.`;
}

function listed(names: readonly string[]): string {
  const others = names.slice(0, -1).join(', ');
  return others === '' ? (names[0] ?? '') : `${others} and ${names.at(-1)}`;
}

function refuseLike(reading: Reading, like: string | undefined, path: Path): void {
  if (like === undefined) return;
  const message = `like is "${like}"; the catalogue has no such lift`;
  reading.refuse(path, { code: 'bad-value', message, hint: liftNameHint(like, liftNames) });
}
