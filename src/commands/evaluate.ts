import { formatProblems, type Problem } from '../notebook/problem.ts';
import { readSource, type Source } from '../notebook/source.ts';
import { run } from '../run.ts';
import type { ScenarioFile } from './files.ts';

/** Runs one scenario; prints its problems and notes. */
export async function evaluate(scenario: ScenarioFile, most?: number) {
  const { file, text, beside } = scenario;
  const { results, problems, notes, broken } = {
    notes: [],
    broken: [],
    ...(await run(file, text, beside)),
  };
  printProblems(problems ?? [...broken, ...notes], [scenario], most);
  if (problems || broken.length > 0) process.exitCode = 1;
  return results;
}

/** Parses one scenario; prints its problems, and exits 1 if there are any. */
export function open(scenario: ScenarioFile): Source | undefined {
  const { source, problems } = readSource(scenario.file, scenario.text, scenario.beside);
  if (problems) failWith(problems, [scenario]);
  return source;
}

/** Prints problems of files and makes the command exit 1. */
export function failWith(problems: readonly Problem[], files: readonly ScenarioFile[]): void {
  printProblems(problems, files);
  process.exitCode = 1;
}

/** Prints problems of files, with their lines. */
export function printProblems(
  problems: readonly Problem[],
  files: readonly ScenarioFile[],
  most?: number,
): void {
  const textOf = (name: string) => files.find(({ file }) => file === name)?.text;
  if (problems.length > 0) process.stderr.write(`${formatProblems(problems, textOf, most)}\n`);
}
