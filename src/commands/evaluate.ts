import { formatProblems, type Problem } from '../notebook/text/problem.ts';
import { readWithIncludes } from '../notebook/text/readWithIncludes.ts';
import type { Source } from '../notebook/text/source.ts';
import { runSource } from '../run.ts';
import type { ScenarioFile } from './files.ts';

/** Where the lines of problems are found: what was read, whether it could be used or not. */
type Read = Pick<Source, 'texts'>;

/** Runs one scenario; prints its problems and notes. */
export async function evaluate(scenario: ScenarioFile, most?: number) {
  return (await evaluateWithPlaces(scenario, most))?.results;
}

/** The same, with the file as it was evaluated. */
export async function evaluateWithPlaces(scenario: ScenarioFile, most?: number) {
  const source = open(scenario, most);
  if (!source) return undefined;
  const found = await runSource(source);
  printProblems(found.problems ?? [...found.broken, ...found.notes], [source], most);
  if (found.problems || found.broken.length > 0) process.exitCode = 1;
  return found.problems ? undefined : found;
}

/** Reads one scenario and what it includes; prints its problems, and exits 1 if there are any. */
export function open({ file, text, beside }: ScenarioFile, most?: number): Source | undefined {
  const { source, problems, texts } = readWithIncludes(file, text, beside);
  if (problems) failWith(problems, [{ texts }], most);
  return source;
}

/** Prints problems of what was read and makes the command exit 1. */
export function failWith(problems: readonly Problem[], read: readonly Read[], most?: number): void {
  printProblems(problems, read, most);
  process.exitCode = 1;
}

/** Prints problems of what was read, with their lines. */
export function printProblems(
  problems: readonly Problem[],
  read: readonly Read[],
  most?: number,
): void {
  const textOf = (file: string) => read.find(({ texts }) => texts.has(file))?.texts.get(file);
  if (problems.length > 0) process.stderr.write(`${formatProblems(problems, textOf, most)}\n`);
}
