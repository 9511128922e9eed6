import { formatProblems } from '../../src/notebook/text/problem.ts';
import { readWithIncludes } from '../../src/notebook/text/readWithIncludes.ts';
import type { Beside, Source } from '../../src/notebook/text/source.ts';
import { runSource } from '../../src/run.ts';

/** A scenario and two files that it includes, for tests of the whole. */

export const athlete = `angles: flexion
athlete: { code: A, reference: female, stature: 170 cm, mass: 65 kg, training: 3 years }
tests:
  - { lift: back squat, to: 110 deg, best: 80 kg }
`;
export const programs = `angles: flexion
programs:
  holds:
    weeks: 8
    sessions per week: 2
    work:
      - { hold: knee extension, at: 90 deg, effort: 90 %, sets: 4, reps: 5, seconds: 5, rest: 90 s }
cells:
  bar to body: = best("back squat", 110 deg) / mass
`;
export const scenario = `title: T
angles: flexion
include: [athletes/a.yaml, programs.yaml]
target: { action: knee extension, from: 75 deg, to: 100 deg }
programs:
  harder: { like: holds, change: { work.1.effort: 95 % } }
cells:
  twice: = 2 * bar_to_body
`;
export const file = 'scenarios/x.yaml';

export const beside =
  (files: Readonly<Record<string, string>>): Beside =>
  (path) => {
    const text = files[path];
    return text === undefined ? { fault: `there is no file ${path} here` } : { text };
  };
export const usual = { 'athletes/a.yaml': athlete, 'programs.yaml': programs };

export function joined(text = scenario, files: Readonly<Record<string, string>> = usual): Source {
  const { source, problems } = readWithIncludes(file, text, beside(files));
  if (!source) throw new Error(formatProblems(problems));
  return source;
}

/** The column at which something first stands in a text. */
export const columnOf = (text: string, written: string) =>
  (text.split('\n').find((line) => line.includes(written)) ?? '').indexOf(written) + 1;

/** What is said of a scenario, with the lines it points at. */
export async function said(text = scenario, files: Readonly<Record<string, string>> = usual) {
  const read = readWithIncludes(file, text, beside(files));
  const ran = read.source ? await runSource(read.source) : read;
  return formatProblems(ran.problems ?? [], (name) => read.texts.get(name));
}

export const withInclude = (value: string) =>
  scenario.replace('[athletes/a.yaml, programs.yaml]', () => value);
