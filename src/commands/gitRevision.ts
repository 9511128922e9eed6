import { existsSync } from 'node:fs';
import { basename, dirname } from 'node:path';
import { besideInRevision } from './besideInRevision.ts';
import { besideOnDisk } from './besideOnDisk.ts';
import { isFolder, readIfThere, type ScenarioFile } from './files.ts';
import { git } from './git.ts';

/** What a name leads to; a revision's file is called REV:path. */
type Read = ScenarioFile | { readonly fault: string };

/** More than any scenario; bytes. */
const mostBytes = 16 * 2 ** 20;

/**
 * Reads the two scenarios of a comparison. With one name, the file as last committed is the first
 * and the file as it is now the second.
 *
 * @returns both texts, or what is wrong with the call in one plain line
 */
export function readPair(
  first: string,
  second?: string,
): { readonly a: ScenarioFile; readonly b: ScenarioFile } | { readonly fault: string } {
  if (second === undefined && isRevision(first))
    return { fault: `${first} is compared with nothing; name a second scenario` };
  const b = readNamed(second ?? first);
  if ('fault' in b) return b;
  const a = second === undefined ? readCommitted(first) : readNamed(first);
  return 'fault' in a ? a : { a, b };
}

/** A file's text, or that of a git revision of a file; a file that is there goes first. */
export function readNamed(name: string): Read {
  if (isRevision(name)) return readRevision(name, '.', name);
  if (isFolder(name)) return { fault: `${name} is a folder; name a file in it` };
  const text = readIfThere(name);
  return text === undefined
    ? { fault: `${name} cannot be read; is the name right?` }
    : { file: name, text, beside: besideOnDisk(name) };
}

/** Git is asked in the file's own folder: the file may belong to another repository than this one. */
const readCommitted = (file: string) =>
  readRevision(`HEAD:./${basename(file)}`, dirname(file), `HEAD:${file}`);

const isRevision = (name: string) => name.includes(':') && !existsSync(name);

/**
 * `git cat-file blob` and not `git show`: it refuses folders, and runs no filter that a repository
 * may have set up.
 */
function readRevision(asked: string, folder: string, file: string): Read {
  const [revision = ''] = asked.split(':');
  const path = asked.slice(revision.length + 1);
  if (asked.startsWith('-'))
    return {
      fault: `${file} begins with "-"; write a revision and a file, such as HEAD~1:${path}`,
    };
  if (path === '') return { fault: `${file} names no file; write it after the colon` };
  const found = git(['cat-file', 'blob', asked], folder, mostBytes);
  if ('text' in found) return { file, text: found.text, beside: besideInRevision(asked, folder) };
  if (found.code === 'ENOENT') return { fault: `${file} cannot be read: git is not installed` };
  if (found.code === 'ENOBUFS') return { fault: `${file} is too large for a scenario` };
  if (/not a git repository/.test(found.says))
    return { fault: `${file} cannot be read: this folder is in no git repository` };
  if (/dubious ownership/.test(found.says))
    return {
      fault: `${file} cannot be read: git does not trust this folder, it is someone else's`,
    };
  const known =
    revision === '' || 'text' in git(['rev-parse', '--verify', revision], folder, mostBytes);
  if (!known) return { fault: `${file} cannot be read: git knows no revision "${revision}"` };
  return {
    fault: `${file} cannot be read: there is no file ${path.replace(/^\.\//, '')} in ${revision || 'what is staged'}`,
  };
}
