import { closeSync, constants, fstatSync, openSync, readSync, realpathSync } from 'node:fs';
import { dirname, isAbsolute, join, relative, sep } from 'node:path';
import { mostBytes } from '../notebook/text/mostBytes.ts';
import type { Beside } from '../notebook/text/source.ts';
import { pathFault } from './pathFault.ts';

/**
 * Reads files that a scenario on disk names. A scenario may come from a stranger: only ordinary files
 * of bounded size in its own folder are read, also where a link leads.
 *
 * @param scenario the scenario's path
 * @returns gives a text, or in one sentence why it cannot; never throws, never waits
 */
export const besideOnDisk =
  (scenario: string): Beside =>
  (path) => {
    const fault = pathFault(path);
    if (fault !== undefined) return { fault };
    try {
      const folder = realpathSync(dirname(scenario));
      const real = realpathSync(join(folder, path));
      if (!isInside(folder, real))
        return { fault: `${path} is a link that leads out of the scenario's folder` };
      return readOrdinary(real, path);
    } catch (error) {
      const isMissing = ['ENOENT', 'ENOTDIR'].includes(String(Object(error).code));
      return {
        fault: isMissing
          ? `there is no file ${path} in the scenario's folder`
          : `${path} cannot be read`,
      };
    }
  };

function isInside(folder: string, real: string): boolean {
  const way = relative(folder, real);
  return way !== '..' && !way.startsWith(`..${sep}`) && !isAbsolute(way);
}

/** Opened without waiting: a pipe that nobody writes to would hold up the run for ever. */
function readOrdinary(real: string, path: string): ReturnType<Beside> {
  const { O_RDONLY, O_NONBLOCK = 0, O_NOFOLLOW = 0 } = constants;
  const opened = openSync(real, O_RDONLY | O_NONBLOCK | O_NOFOLLOW);
  try {
    const stats = fstatSync(opened);
    if (stats.isDirectory()) return { fault: `${path} is a folder; name a file in it` };
    if (!stats.isFile()) return { fault: `${path} is no ordinary file` };
    // One more than allowed: the size that is told need not be that which comes.
    const bytes = Buffer.alloc(Math.min(stats.size, mostBytes) + 1);
    const length = readWhole(opened, bytes);
    if (length > mostBytes) return { fault: `${path} is larger than ${mostBytes / 1e6} MB` };
    return { text: bytes.toString('utf8', 0, length) };
  } finally {
    closeSync(opened);
  }
}

/** A single read may give less than there is. */
function readWhole(opened: number, bytes: Buffer): number {
  let length = 0;
  for (;;) {
    const more = readSync(opened, bytes, length, bytes.length - length, null);
    length += more;
    if (more === 0 || length === bytes.length) return length;
  }
}
