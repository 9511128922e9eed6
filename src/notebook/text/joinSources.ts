import { valueAt } from '../schemaAt.ts';
import type { Place, Problem } from './problem.ts';
import type { Source } from './source.ts';
import { most } from './tooMuch.ts';

/** Groups by name: each file may have some of the names. Every other key stands in one file. */
const byName = ['machines', 'chains', 'bands', 'lifts', 'programs', 'cells'] as const;

/** Keys under which angles turn round with the convention; limits, which name their motion, do not. */
const withAngles = ['tests', 'target', 'machines', 'lifts', 'programs', 'cells', 'study'] as const;

type Group = Readonly<Record<string, unknown>>;

/**
 * Puts a scenario and the files it includes together, so that it reads as one file whose values
 * keep their places. The scenario's own names come first, then those of each file in its order.
 *
 * A file that may hold angles must say how it writes them, and as the scenario does: the same
 * number would silently mean another angle. A file without such keys need not say it.
 *
 * @param own the scenario; its `include:` is not in the joined value
 * @param included each a group at the top
 * @returns the joined source, or what stands in two files or does not fit; never throws
 */
export function joinSources(
  own: Source,
  included: readonly Source[],
):
  | { readonly source: Source; readonly problems?: undefined }
  | { readonly problems: readonly Problem[]; readonly source?: undefined } {
  const misfits = included.flatMap((part) => misfit(own, part));
  if (misfits.length > 0) return { problems: misfits };
  // The scenario's own "angles:" counts alone; that of the others has been compared with it.
  const parts = [without(own, 'include'), ...included.map((part) => without(part, 'angles'))];
  const problems = [
    ...parts.flatMap((part, i) => conflicts(parts.slice(0, i), part)),
    ...tooLong(parts, own),
  ];
  if (problems.length > 0) return { problems };
  const keys = new Set(parts.flatMap(({ value }) => Object.keys(Object(value))));
  const value = Object.fromEntries([...keys].map((key) => [key, joinedValue(parts, key)]));
  const at: Source['at'] = (path, options) => (holderOf(path, parts) ?? own).at(path, options);
  const texts = new Map(parts.flatMap((part) => [...part.texts]));
  return { source: { ...own, value, at, texts } };
}

/** What keeps a file from being included at all. */
function misfit(own: Source, part: Source): Problem[] {
  const problem = (path: readonly string[], message: string, hint: string): Problem[] => [
    { code: 'include', message, at: part.at(path, { key: path[0] !== 'angles' }), hint },
  ];
  if (!isGroup(part.value))
    return problem([], 'an included file must be a group of lines', 'write lines such as tests:');
  if (has(part, 'include')) {
    const hint = 'name all files in the scenario itself';
    return problem(['include'], 'an included file cannot include others', hint);
  }
  const [said, meant] = [valueAt(part.value, ['angles']), valueAt(own.value, ['angles'])];
  const turning = withAngles.find((key) => has(part, key));
  if (said === undefined && turning !== undefined) {
    const message = `angles is missing; an included file that has ${turning}: says how it writes joint angles`;
    const hint = 'write angles: flexion (0 = straight) or angles: included (180 = straight)';
    return problem([turning], message, hint);
  }
  if (said === undefined || meant === undefined || said === meant) return [];
  return problem(
    ['angles'],
    `angles is ${JSON.stringify(said)} here and ${JSON.stringify(meant)} in the scenario (${lineOf(own.at(['angles']))})`,
    'a scenario and the files it includes write joint angles in one way; rewrite those of one of them',
  );
}

/** Keys and names that an earlier file has too. */
function conflicts(before: readonly Source[], part: Source): Problem[] {
  return Object.keys(Object(part.value)).flatMap((key): Problem[] => {
    const group = valueAt(part.value, [key]);
    const holders = before.filter((one) => has(one, key));
    const isJoined =
      isOneOf(byName, key) && [part, ...holders].every((one) => isGroup(Object(one.value)[key]));
    const paths = isJoined ? Object.keys(Object(group)).map((name) => [key, name]) : [[key]];
    return paths.flatMap((path) => {
      const first = holders.find((one) => valueAt(one.value, path) !== undefined);
      return first ? [twice(path, first, part)] : [];
    });
  });
}

const twice = (path: readonly string[], first: Source, second: Source): Problem => ({
  code: 'duplicate-key',
  message: `"${path.at(-1)}" is in two files; the first is ${lineOf(first.at(path, { key: true }))}`,
  at: second.at(path, { key: true }),
  hint: 'keep one of the two',
});

/** A joined group is bounded like one that stands in a single file. */
function tooLong(parts: readonly Source[], own: Source): Problem[] {
  return byName.flatMap((key): Problem[] => {
    const length = parts.reduce(
      (sum, part) => sum + Object.keys(Object(valueAt(part.value, [key]))).length,
      0,
    );
    if (length <= most.entries) return [];
    const message = `together, the files have ${length} ${key}; at most ${most.entries} are read`;
    return [{ code: 'too-much', message, at: own.at(['include'], { key: true }) }];
  });
}

function joinedValue(parts: readonly Source[], key: string): unknown {
  const holders = parts.filter((part) => has(part, key)).map((part) => valueAt(part.value, [key]));
  return holders.length === 1
    ? holders[0]
    : Object.fromEntries(holders.flatMap((value) => Object.entries(Object(value))));
}

/** The file that has the name a path begins with, else the first that has its group. */
function holderOf([key, name]: Parameters<Source['at']>[0], parts: readonly Source[]) {
  if (key === undefined) return undefined;
  const holders = parts.filter((part) => has(part, key));
  const named = holders.find(({ value }) => name !== undefined && holds(Object(value)[key], name));
  return named ?? holders[0];
}

function without(source: Source, key: string): Source {
  const entries = Object.entries(Object(source.value)).filter(([name]) => name !== key);
  return { ...source, value: Object.fromEntries(entries) };
}

const lineOf = ({ file, line }: Place) => `${file}:${line}`;

const has = ({ value }: Source, key: string | number) => holds(value, key);

const holds = (value: unknown, key: string | number) =>
  typeof value === 'object' && value !== null && Object.hasOwn(value, key);

const isGroup = (value: unknown): value is Group =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const isOneOf = (names: readonly string[], name: string) => names.includes(name);
