import type { Path } from '../scenario.ts';
import { valueAt } from '../schemaAt.ts';
import { besideName } from './besideName.ts';
import type { Problem } from './problem.ts';
import type { Source } from './source.ts';

/** A file that a scenario names under `include:`. */
export interface IncludedName {
  /** Where it is named. */
  readonly path: Path;
  /** As written: from the scenario's folder. */
  readonly written: string;
  /** The name to show. */
  readonly file: string;
}

/** Each is read, and each may have to be looked up in git. */
export const mostIncluded = 20;

/**
 * Reads which files a scenario includes; whether they are there is seen when they are read.
 *
 * @returns the names in the order of writing, none if there is no `include:`, or what is wrong
 * with them; never throws
 */
export function includedNames(
  source: Source,
):
  | { readonly names: readonly IncludedName[]; readonly problems?: undefined }
  | { readonly problems: readonly Problem[]; readonly names?: undefined } {
  const raw = valueAt(source.value, ['include']);
  if (raw === undefined) return { names: [] };
  const list = Array.isArray(raw) ? raw : [raw];
  if (list.length > mostIncluded) {
    const message = `include names ${list.length} files; at most ${mostIncluded} are read`;
    const at = source.at(['include'], { key: true });
    return { problems: [{ code: 'too-much', message, at, hint: 'put some of them together' }] };
  }
  const names: IncludedName[] = [];
  const problems = list.flatMap((entry: unknown, i): Problem[] => {
    const path: Path = Array.isArray(raw) ? ['include', i] : ['include'];
    const written = typeof entry === 'string' ? entry.trim() : '';
    const fault = nameFault(source, entry, names);
    if (!fault) names.push({ path, written, file: besideName(source.file, written) });
    return fault ? [{ code: 'include', at: source.at(path), ...fault }] : [];
  });
  return problems.length > 0 ? { problems } : { names };
}

function nameFault(
  { file }: Source,
  entry: unknown,
  before: readonly IncludedName[],
): { readonly message: string; readonly hint: string } | undefined {
  if (typeof entry !== 'string' || entry.trim() === '') {
    const message =
      entry === null || entry === ''
        ? 'include names no file'
        : 'include must be the name of a file, or a list of such names';
    return { message, hint: 'write, for example, include: [athletes/SN-04.yaml, equipment.yaml]' };
  }
  const name = besideName(file, entry.trim());
  if (name === file)
    return { message: 'the scenario includes itself', hint: 'name another file, or delete this' };
  if (before.some((one) => one.file === name))
    return { message: `${entry.trim()} is included twice`, hint: 'keep one of the two' };
  return undefined;
}
