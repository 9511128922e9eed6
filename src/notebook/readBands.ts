import { complete } from './complete.ts';
import type { Draft } from './draft.ts';
import { readQuantity } from './quantity.ts';
import type { Expected, Reading } from './reading.ts';
import { readNamed } from './readNamed.ts';
import type { BandsFile, RubberFile } from './rigSchema.ts';
import type { Bands, Path, TensionPoint } from './scenario.ts';

type BandsDraft = NonNullable<Draft<BandsFile>>;
type RubberDraft = NonNullable<Draft<RubberFile>>;

/** A length with its usual size and what is said of one beyond it. */
const lengthOf = (example: string, least: number, most: number, bounds: string): Expected => ({
  dimension: 'length',
  example,
  least,
  most,
  bounds,
});
const width = lengthOf('22 mm', 0.003, 0.2, 'a band is between 3 mm and 20 cm wide');
const thickness = lengthOf('4.5 mm', 0.0005, 0.02, 'a band is between 0.5 mm and 2 cm thick');
const unstretched = lengthOf('1 m', 0.1, 4, 'a band is between 0.1 m and 4 m long unstretched');
const anchor = lengthOf('0 m', 0, 4, 'the fixed end lies between the floor and 4 m above it');
const bandLength = lengthOf('1.4 m', 0.1, 6, 'a band in use is between 0.1 m and 6 m long');
const tension: Expected = {
  dimension: 'force',
  example: '100 N',
  least: 0,
  most: 5000,
  bounds: 'bands pull with 0 to 5000 N',
};

/**
 * Reads the bands that the coach has.
 *
 * @returns name → bands, those that could be read; problems are collected, never thrown
 */
export function readBands(
  reading: Reading,
  bands: Readonly<Record<string, Draft<BandsFile>>> | undefined,
): Readonly<Record<string, Bands>> {
  return readNamed(bands, 'bands', (draft, path) =>
    complete<Bands>({
      pull: readPull(reading, draft, path),
      anchor: reading.quantity([...path, 'anchor'], draft.anchor ?? '0 m', anchor),
      path,
    }),
  );
}

/** Exactly one of `tension` and `rubber`; a value of the wrong kind is undefined but stands there. */
function readPull(reading: Reading, draft: BandsDraft, path: Path): Bands['pull'] | undefined {
  const has = (name: string) => Object.hasOwn(draft, name);
  const name = path.at(-1);
  if (has('tension') && has('rubber')) {
    const message = `${name} has both tension and rubber; either one says how hard the bands pull`;
    const hint = 'keep tension, which was measured, and delete rubber';
    reading.refuse([...path, 'rubber'], { code: 'two-tensions', message, hint, key: true });
  }
  if (!has('tension') && !has('rubber')) {
    const message = `${name} does not say how hard the bands pull`;
    const hint =
      'measure them and write tension: { 0.9 m: 100 N, 1.4 m: 260 N }, or describe the rubber';
    reading.refuse(path, { code: 'no-tension', message, hint, key: true });
  }
  if (has('tension') && has('count')) {
    const message = 'tension is the pull of all bands together, so their count is not needed';
    const hint = 'delete count, and give the pull of all bands at each length';
    reading.refuse([...path, 'count'], { code: 'count-of-tension', message, hint, key: true });
  }
  if (draft.tension) return readTension(reading, draft.tension, [...path, 'tension']);
  return draft.rubber && readRubber(reading, draft, draft.rubber, path);
}

function readRubber(
  reading: Reading,
  draft: BandsDraft,
  rubber: RubberDraft,
  path: Path,
): Bands['pull'] | undefined {
  if (!Object.hasOwn(draft, 'count')) {
    const message = `${path.at(-1)} does not say how many bands of this rubber are used`;
    const hint = 'write count: 2 for one at each end of the bar, count: 1 for a single one';
    reading.refuse(path, { code: 'no-count', message, hint, key: true });
  }
  const at = [...path, 'rubber'];
  return complete({
    width: reading.quantity([...at, 'width'], rubber.width, width),
    thickness: reading.quantity([...at, 'thickness'], rubber.thickness, thickness),
    rest: reading.quantity([...at, 'unstretched'], rubber.unstretched, unstretched),
    strands: rubber.strands,
    count: draft.count,
  });
}

interface Measured extends TensionPoint {
  readonly path: Path;
}

function readTension(
  reading: Reading,
  draft: Readonly<Record<string, string | undefined>>,
  path: Path,
): Bands['pull'] | undefined {
  const entries = Object.entries(draft);
  if (entries.length < 2) {
    const given = entries.length === 1 ? 'only one length' : 'no length';
    const message = `tension has ${given}; one pull does not tell where the bands go slack or how fast they tighten`;
    const hint =
      'measure the pull at two lengths or more, with the bar at the bottom and at the top of the lift';
    reading.refuse(path, { code: 'too-few-lengths', message, hint, key: true });
  }
  const points = entries.flatMap(([name, raw]): Measured[] => {
    const at = [...path, name];
    const length = readPart(reading, 'a length in tension', name, bandLength, at, true);
    const pull = readPart(reading, `the pull at ${name}`, raw, tension, at);
    return length === undefined || pull === undefined ? [] : [{ length, tension: pull, path: at }];
  });
  const sorted = [...points].sort((a, b) => a.length - b.length);
  checkRising(reading, sorted);
  if (entries.length < 2 || points.length < entries.length) return undefined;
  return { points: sorted.map(({ length, tension: pull }) => ({ length, tension: pull })) };
}

/** Half of an entry of `tension`, under a name of its own: the entry is named by its length. */
function readPart(
  reading: Reading,
  what: string,
  raw: string | undefined,
  { dimension, example, least = 0, most = 0, bounds = '' }: Expected,
  path: Path,
  key = false,
): number | undefined {
  if (raw === undefined) return undefined;
  const { value, fault } = readQuantity(raw, dimension, reading.units, example);
  if (fault) {
    const kilograms = /^\s*([\d.]+)\s*kg\s*$/.exec(raw)?.[1];
    const scale = kilograms && `a scale that shows kilograms: write "${kilograms} kgf"`;
    const hint = (dimension === 'force' && scale) || fault.hint;
    const message = `${what} ${fault.message}`;
    reading.refuse(path, { code: fault.code, message, key, ...(hint ? { hint } : {}) });
    return undefined;
  }
  if (value >= least && value <= most) return value;
  const message = `${what} is ${raw}; ${bounds}`;
  reading.refuse(path, { code: 'out-of-bounds', message, key });
  return undefined;
}

/** A length given twice, a pull that does not rise, and a band that would pull unstretched. */
function checkRising(reading: Reading, sorted: readonly Measured[]): void {
  for (const [index, point] of sorted.entries()) {
    const before = sorted[index - 1];
    if (!before) continue;
    const [shorter, longer] = [before, point].map(({ path }) => path.at(-1));
    if (point.length - before.length < 1e-9) {
      const message = `tension gives one length twice: "${shorter}" and "${longer}"`;
      const hint = 'keep one of them, or their mean';
      reading.refuse(point.path, { code: 'duplicate-length', message, hint, key: true });
    } else if (point.tension <= before.tension) {
      const message = `the bands pull no harder at ${longer} than at ${shorter}; a longer band pulls harder`;
      const hint = 'check the two measurements';
      reading.refuse(point.path, { code: 'falling-tension', message, hint });
    }
  }
  const [first, second] = sorted;
  if (!first || !second || second.tension <= first.tension) return;
  const slope = (second.tension - first.tension) / (second.length - first.length);
  if (first.tension < slope * first.length) return;
  const message = `by the pulls at ${first.path.at(-1)} and ${second.path.at(-1)} the bands would pull even with no length at all`;
  const hint = 'check the lengths: from fixed end to bar, not the stretch alone';
  reading.refuse(first.path, { code: 'never-slack', message, hint });
}
