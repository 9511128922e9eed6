import type { Path } from './scenario.ts';

/**
 * Names a value by its whole path, as in `programs.deep squat.work.1.sets`; list places count
 * from 1.
 *
 * @returns "the file" for the empty path; never throws
 */
export function pathName(path: Path): string {
  if (path.length === 0) return 'the file';
  return path.map((step) => (typeof step === 'number' ? step + 1 : step)).join('.');
}

/**
 * Names a value by its last word, as in `sets`, or `work.1` for an entry of a list.
 *
 * @returns "the file" for the empty path; never throws
 */
export function lastName(path: Path): string {
  let start = path.length - 1;
  while (start > 0 && typeof path[start] === 'number') start--;
  return pathName(path.slice(Math.max(0, start)));
}
