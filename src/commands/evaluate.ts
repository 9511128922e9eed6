import { formatProblems } from '../notebook/problem.ts';
import { run } from '../run.ts';
import type { ScenarioFile } from './files.ts';

/** Runs one scenario; prints its problems and notes. */
export async function evaluate({ file, text }: ScenarioFile, most?: number) {
  const { results, problems, notes, broken } = {
    notes: [],
    broken: [],
    ...(await run(file, text)),
  };
  const messages = problems ?? [...broken, ...notes];
  if (messages.length > 0) process.stderr.write(`${formatProblems(messages, () => text, most)}\n`);
  if (problems || broken.length > 0) process.exitCode = 1;
  return results;
}
