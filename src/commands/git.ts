import { execFileSync } from 'node:child_process';

/** What git printed; else the system's word for why it could not be run, and what it said. */
type Answer = { readonly text: string } | { readonly code?: string; readonly says: string };

/**
 * Runs git without a shell; its messages are asked for in English, because they are looked into.
 *
 * @param folder where it is run
 * @param mostBytes of its answer; more is the code ENOBUFS
 * @returns the answer; never throws
 */
export function git(args: readonly string[], folder: string, mostBytes: number): Answer {
  try {
    return {
      text: execFileSync('git', args, {
        cwd: folder,
        encoding: 'utf8',
        env: { ...process.env, LC_ALL: 'C' },
        maxBuffer: mostBytes,
        stdio: ['ignore', 'pipe', 'pipe'],
      }),
    };
  } catch (error) {
    const { code, stderr } = Object(error);
    return { ...(typeof code === 'string' ? { code } : {}), says: String(stderr ?? '') };
  }
}
