import {
  accessSync,
  chmodSync,
  constants,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  realpathSync,
  renameSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { basename, join } from 'node:path';
import type { Beside } from '../notebook/text/source.ts';
import { besideOnDisk } from './besideOnDisk.ts';
import { refuse } from './refuse.ts';

/** A scenario file and what it holds. */
export interface ScenarioFile {
  readonly file: string;
  readonly text: string;
  readonly beside?: Beside;
}

/** Where scenarios are looked for when none is named. */
export const usualFolder = 'scenarios';

/** Texts of the files named, or of every scenario in the usual folder. */
export function read(files: readonly string[]): ScenarioFile[] {
  const named = files.length > 0 ? files : scenariosIn(usualFolder);
  const taken = new Map<string, string>();
  return named.flatMap((file) => {
    const name = reportName(file);
    const twin = taken.get(name);
    if (twin !== undefined && twin !== file)
      return refuse(`${file} and ${twin} would both write ${name}; rename one of them`);
    taken.set(name, file);
    if (isFolder(file)) return refuse(`${file} is a folder; name the files in it (${file}/*.yaml)`);
    const text = readIfThere(file);
    return text === undefined
      ? refuse(`${file} cannot be read; is the name right?`)
      : [{ file, text, beside: besideOnDisk(file) }];
  });
}

function scenariosIn(folder: string): string[] {
  if (!isFolder(folder)) return refuse(`there is no folder ${folder}/ here; name a scenario file`);
  return readdirSync(folder)
    .filter((name) => /\.ya?ml$/.test(name))
    .sort()
    .map((name) => join(folder, name));
}

export function isFolder(path: string): boolean {
  return statSync(path, { throwIfNoEntry: false })?.isDirectory() ?? false;
}

export function readIfThere(path: string): string | undefined {
  try {
    return readFileSync(path, 'utf8');
  } catch {
    return undefined;
  }
}

/**
 * Writes a file whole or not at all: first beside it, then by renaming. A file that is there keeps
 * its mode; a link stays a link, and what it leads to is written.
 *
 * @param hint what to do where it cannot be written
 */
export function writeWhole(
  folder: string,
  path: string,
  text: string,
  hint = 'choose another folder with --out',
): boolean {
  try {
    mkdirSync(folder, { recursive: true });
    const target = existsSync(path) ? realpathSync(path) : path;
    const mode = statSync(target, { throwIfNoEntry: false })?.mode;
    // A write-protected file could still be renamed over.
    if (mode !== undefined) accessSync(target, constants.W_OK);
    writeFileSync(`${target}.part`, text);
    if (mode !== undefined) chmodSync(`${target}.part`, mode);
    renameSync(`${target}.part`, target);
    return true;
  } catch {
    refuse(`${path} cannot be written; ${hint}`);
    return false;
  }
}

/** Name of the report on its retests. */
export const retestName = (file: string) => reportName(file).replace(/\.md$/, '-retest.md');

/** Name of the report of a scenario file. */
export const reportName = (file: string) => basename(file).replace(/\.ya?ml$/, '.md');
