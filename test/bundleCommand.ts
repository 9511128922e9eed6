import { spawnSync } from 'node:child_process';
import { bundle } from './command.ts';

/** Bundles the command once for all tests that run it as a coach does. */
export default function bundleCommand(): void {
  const options = ['--bundle', '--platform=node', '--format=cjs', '--log-level=error'];
  const built = spawnSync(
    'node_modules/.bin/esbuild',
    ['src/main.ts', ...options, `--outfile=${bundle}`],
    { encoding: 'utf8' },
  );
  if (built.stderr !== '') throw new Error(built.stderr);
}
