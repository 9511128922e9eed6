import { guardTogether } from './guardText.ts';
import { type IncludedName, includedNames } from './includedNames.ts';
import { joinSources } from './joinSources.ts';
import type { Problem } from './problem.ts';
import { type Beside, readSource, type Source } from './source.ts';

/** Every text that was read, by the name under which problems point into it. */
type Texts = Source['texts'];

type Read =
  | { readonly source: Source; readonly texts: Texts; readonly problems?: undefined }
  | { readonly problems: readonly Problem[]; readonly texts: Texts; readonly source?: undefined };

/**
 * Reads a scenario and the files that it names under `include:`; an included file names no others.
 *
 * @param file the scenario's name, to show in problems
 * @param text what it holds
 * @param beside reads the files; without it, a scenario that includes any is refused
 * @returns one source whose values keep their places, or what is wrong, both with the texts that
 * places point into; never throws
 */
export function readWithIncludes(file: string, text: string, beside?: Beside): Read {
  const { source: own, problems } = readSource(file, text, beside);
  if (problems) return { problems, texts: new Map([[file, text]]) };
  const { texts } = own;
  const named = includedNames(own);
  if (named.problems) return { problems: named.problems, texts };
  if (!Object.hasOwn(Object(own.value), 'include')) return { source: own, texts };
  if (!beside) return { problems: [folderless(own)], texts };
  return join(own, named.names, beside);
}

function join(own: Source, names: readonly IncludedName[], beside: Beside): Read {
  const files = names.map((name) => ({ name, ...textOf(beside, name) }));
  const absent = files.flatMap(({ name, fault }): Problem[] =>
    fault === undefined ? [] : [{ code: 'include', message: fault, at: own.at(name.path) }],
  );
  if (absent.length > 0) return { problems: absent, texts: own.texts };
  const excess = guardTogether(
    [own.text, ...files.map(({ text }) => text)],
    own.at(['include'], { key: true }),
  );
  if (excess) return { problems: [excess], texts: own.texts };
  const texts = new Map([
    ...own.texts,
    ...files.map(({ name, text }) => [name.file, text] as const),
  ]);
  const read = files.map(({ name, text }) => readSource(name.file, text));
  const faults = read.flatMap(({ problems = [] }) => problems);
  if (faults.length > 0) return { problems: faults, texts };
  const sources = read.flatMap(({ source }) => (source ? [source] : []));
  return { texts, ...joinSources(own, sources) };
}

function textOf(beside: Beside, { written }: IncludedName) {
  const found = beside(written);
  return 'text' in found ? { text: found.text } : { text: '', fault: found.fault };
}

const folderless = (own: Source): Problem => ({
  code: 'include',
  message: 'other files can be included only where the scenario is a file in a folder',
  at: own.at(['include'], { key: true }),
  hint: 'save it, or write here what the other files hold',
});
