import { readScenario } from '../../src/notebook/readScenario.ts';
import type { Scenario } from '../../src/notebook/scenario.ts';
import { formatProblem } from '../../src/notebook/text/problem.ts';
import type { Beside } from '../../src/notebook/text/source.ts';

/** A scenario around some tests; athlete and numbers are invented. */
export function around(tests: string, more = '', angles = 'flexion'): string {
  return `title: Tests
angles: ${angles}
athlete: { code: SN-04, reference: female, stature: 168 cm, mass: 63.5 kg, training: 4 years }
tests:
${tests}
target: { action: knee extension, from: ${angles === 'flexion' ? '75 deg, to: 100 deg' : '105 deg, to: 80 deg'} }
programs:
  squats: { weeks: 6, sessions per week: 2, work: [{ hold: knee extension, at: 90 deg, effort: 90 %, sets: 3, reps: 5, seconds: 5 }] }
${more}`;
}

const filesOf =
  (files: Readonly<Record<string, string>>): Beside =>
  (path) => {
    const text = files[path];
    return text === undefined ? { fault: `there is no file ${path}` } : { text };
  };

/** The scenario that is read, with the files beside it. */
export async function readWith(
  text: string,
  files: Readonly<Record<string, string>> = {},
): Promise<Scenario> {
  const read = await readScenario('club/f.yaml', text, undefined, filesOf(files));
  if (read.problems)
    throw new Error(read.problems.map((problem) => formatProblem(problem)).join('\n'));
  return read.scenario;
}

/** Problems, else remarks, each with its place and hint and the words it stands at. */
export async function saidOf(
  text: string,
  files: Readonly<Record<string, string>> = {},
): Promise<string[]> {
  const read = await readScenario('club/f.yaml', text, undefined, filesOf(files));
  const texts: Readonly<Record<string, string>> = {
    'club/f.yaml': text,
    ...Object.fromEntries(Object.entries(files).map(([name, file]) => [`club/${name}`, file])),
  };
  return (read.problems ?? read.notes).map(({ at, message, hint }) => {
    const { file = '', line = 0, col = 0, endCol } = at ?? {};
    const written = texts[file]?.split(/\r\n|\r|\n/)[line - 1] ?? '';
    const words = written.slice(col - 1, (endCol ?? col + 1) - 1);
    return `${file.replace('club/', '')}:${line} [${words}] ${message}${hint === undefined ? '' : ` | ${hint}`}`;
  });
}
