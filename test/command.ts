import { spawnSync } from 'node:child_process';
import { resolve } from 'node:path';

/** The bundled command, made before the tests by `bundleCommand.ts`. */
export const bundle = resolve('.bundle/tests.cjs');

/** Runs the bundled command as a coach does. */
export function command(...args: string[]) {
  const { status, stdout, stderr } = spawnSync('node', [bundle, ...args], { encoding: 'utf8' });
  return { status, stdout, stderr };
}
