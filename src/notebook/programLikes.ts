import { didYouMean } from './didYouMean.ts';
import type { Path } from './scenario.ts';
import type { Problem } from './text/problem.ts';
import type { Source } from './text/source.ts';

type Plain = Record<string, unknown>;

/** A copy of a program in the making, and where the file says what stands in it. */
interface Derived {
  readonly value: Plain;
  /** Path inside the program, joined, → where that value stands in the file. */
  readonly places: Map<string, Path>;
}

/**
 * Puts the programs that are `like` another in full: a copy of that one with named changes.
 *
 * `change` maps places in the program ("work.1.to", list places from 1) to new values; an empty value
 * takes the entry out. Other names beside `like` replace the same name of the copy. A problem found
 * later in a copied value is shown where it stands in the file: in the change, or in the program
 * copied from.
 *
 * @returns the source with whole programs, and what is wrong with `like` and `change`; never throws
 */
export function withWholePrograms(source: Source): {
  readonly source: Source;
  readonly problems: readonly Problem[];
} {
  const file = plainOf(source.value);
  const programs = plainOf(file?.programs);
  const names = Object.entries(programs ?? {}).flatMap(([name, program]) =>
    plainOf(program) && Object.hasOwn(plainOf(program) ?? {}, 'like') ? [name] : [],
  );
  if (!file || !programs || names.length === 0) return { source, problems: [] };
  const derivation = new Derivation(source, programs);
  const whole = Object.fromEntries(
    Object.keys(programs).map((name) => [
      name,
      derivation.whole(name, [])?.value ?? programs[name],
    ]),
  );
  const at: Source['at'] = (path, options) => source.at(derivation.placeOf(path), options);
  const value = { ...file, programs: whole };
  return { source: { ...source, value, at }, problems: derivation.problems };
}

class Derivation {
  readonly problems: Problem[] = [];
  private readonly source: Source;
  private readonly programs: Plain;
  private readonly done = new Map<string, Derived | undefined>();

  constructor(source: Source, programs: Plain) {
    this.source = source;
    this.programs = programs;
  }

  /** A program in full; undefined if it is none or its `like` is wrong, which is reported. */
  whole(name: string, trail: readonly string[]): Derived | undefined {
    if (this.done.has(name)) return this.done.get(name);
    const own = plainOf(this.programs[name]);
    if (!own) return undefined;
    const made = Object.hasOwn(own, 'like')
      ? this.derive(name, own, [...trail, name])
      : { value: own, places: new Map<string, Path>() };
    this.done.set(name, made);
    return made;
  }

  /** Where the file says what stands at a path of the whole programs. */
  placeOf(path: Path): Path {
    const [group, name, ...inside] = path;
    if (group !== 'programs' || name === undefined) return path;
    const places = this.done.get(String(name))?.places;
    for (let depth = inside.length; depth > 0; depth--) {
      const place = places?.get(joined(inside.slice(0, depth)));
      if (place) return [...place, ...inside.slice(depth)];
    }
    return path;
  }

  private derive(name: string, own: Plain, trail: readonly string[]): Derived | undefined {
    const path: Path = ['programs', name];
    const like = own.like;
    const base = typeof like === 'string' ? like : '';
    if (trail.includes(base)) {
      const circle = [...trail.slice(trail.indexOf(base)), base].join(' → ');
      this.refuse([...path, 'like'], `programs are like each other in a circle: ${circle}`, {
        hint: 'write one of them out in full',
      });
      return undefined;
    }
    if (!plainOf(this.programs[base])) {
      const meant = didYouMean(base, Object.keys(this.programs));
      this.refuse([...path, 'like'], `there is no program "${String(like)}" in this file`, {
        hint: meant ? `did you mean "${meant}"?` : 'name another program of the file',
      });
      return undefined;
    }
    const model = this.whole(base, trail);
    if (!model) return undefined;
    const copy: Derived = { value: structuredClone(model.value), places: new Map() };
    for (const [key] of Object.entries(model.value))
      copy.places.set(joined([key]), ['programs', base, key]);
    for (const [key, place] of model.places) copy.places.set(key, place);
    this.replace(copy, own, path);
    this.change(copy, own.change, [...path, 'change'], base);
    return copy;
  }

  /** Names written beside `like` stand in place of those copied; phases in place of all work. */
  private replace(copy: Derived, own: Plain, path: Path): void {
    const rival = Object.hasOwn(own, 'phases')
      ? ['weeks', 'sessions per week', 'work', 'progress', 'deload']
      : Object.hasOwn(own, 'work')
        ? ['phases']
        : [];
    for (const key of rival) delete copy.value[key];
    for (const [key, value] of Object.entries(own)) {
      if (key === 'like' || key === 'change') continue;
      forget(copy.places, [key]);
      copy.value[key] = value;
      copy.places.set(joined([key]), [...path, key]);
    }
  }

  private change(copy: Derived, changes: unknown, path: Path, base: string): void {
    if (changes === undefined) return;
    const entries = plainOf(changes);
    if (!entries) {
      this.refuse(path, 'change must be a group such as { work.1.to: 90 deg }');
      return;
    }
    for (const [key, value] of setsFirst(Object.entries(entries))) {
      const fault = put(copy, key.trim().split('.'), value, [...path, key]);
      if (fault)
        this.refuse([...path, key], `"${key}" is no place in "${base}": ${fault.message}`, fault);
    }
  }

  private refuse(path: Path, message: string, more: { readonly hint?: string } = {}): void {
    const { hint } = more;
    this.problems.push({
      code: 'derived-program',
      message,
      at: this.source.at(path, { key: path.at(-2) === 'change' }),
      ...(hint === undefined ? {} : { hint }),
    });
  }
}

/** Takes entries out last, later ones of a list first, so that places mean those of the model. */
function setsFirst(entries: readonly [string, unknown][]): readonly [string, unknown][] {
  const out = entries.filter(([, value]) => value === null);
  const lastNumber = ([key]: readonly [string, unknown]) => Number(key.split('.').at(-1)) || 0;
  return [
    ...entries.filter(([, value]) => value !== null),
    ...out.sort((a, b) => lastNumber(b) - lastNumber(a)),
  ];
}

/** Puts a value at a place of a copy; answers what is wrong with the place. */
function put(
  copy: Derived,
  steps: readonly string[],
  value: unknown,
  place: Path,
): { readonly message: string; readonly hint?: string } | undefined {
  const inside: (string | number)[] = [];
  let here: unknown = copy.value;
  for (const [i, step] of steps.entries()) {
    const isLast = i === steps.length - 1;
    const where = inside.length === 0 ? 'the program' : shown(inside);
    if (Array.isArray(here)) {
      const index = Number(step) - 1;
      if (!Number.isInteger(index) || index < 0 || index >= here.length)
        return {
          message: `${where} has ${here.length} ${here.length === 1 ? 'entry' : 'entries'}, not one numbered ${step}`,
          hint: `places in lists count from 1: ${shown([...inside, 0])}`,
        };
      inside.push(index);
      if (isLast) setItem(here, index, value);
      else here = here[index];
    } else {
      const group = plainOf(here);
      if (!group || (!isLast && !Object.hasOwn(group, step))) {
        const known = group ? Object.keys(group) : [];
        const meant = didYouMean(step, known);
        return {
          message: `there is no ${step} in ${where}`,
          hint: meant
            ? `did you mean ${meant}?`
            : known.length > 0
              ? `there is: ${known.join(', ')}`
              : 'shorten it',
        };
      }
      inside.push(step);
      if (isLast) setEntry(group, step, value);
      else here = group[step];
    }
  }
  forget(copy.places, inside);
  copy.places.set(joined(inside), place);
  return undefined;
}

function setItem(list: unknown[], index: number, value: unknown): void {
  if (value === null) list.splice(index, 1);
  else list[index] = value;
}

function setEntry(group: Plain, key: string, value: unknown): void {
  if (value === null) delete group[key];
  else group[key] = value;
}

/** Places known of values inside one that is replaced do not hold any more. */
function forget(places: Map<string, Path>, inside: readonly (string | number)[]): void {
  const start = joined(inside);
  for (const key of [...places.keys()])
    if (key === start || key.startsWith(`${start}\n`)) places.delete(key);
}

const joined = (path: readonly (string | number)[]) => path.join('\n');

/** A place as a coach writes it: "work.1.to". */
const shown = (path: readonly (string | number)[]) =>
  path.map((step) => (typeof step === 'number' ? step + 1 : step)).join('.');

function plainOf(value: unknown): Plain | undefined {
  return typeof value === 'object' && value !== null && !Array.isArray(value)
    ? (value as Plain)
    : undefined;
}
