import { describe, expect, it } from 'vitest';
import { formatProblems } from '../../src/notebook/text/problem.ts';
import { readWithIncludes } from '../../src/notebook/text/readWithIncludes.ts';
import { run } from '../../src/run.ts';
import {
  athlete,
  beside,
  file,
  programs,
  said,
  scenario,
  usual,
  withInclude,
} from './including.ts';

/** What a scenario cannot include, with the words and the place; expected lines are counted by hand. */

describe('what does not fit together', () => {
  it.each<[string, string, Readonly<Record<string, string>>, string]>([
    [
      'a key in two files',
      scenario + athlete.replace('angles: flexion\n', ''),
      usual,
      'scenarios/athletes/a.yaml:2:1: "athlete" is in two files; the first is scenarios/x.yaml:9\n' +
        'athlete: { code: A, reference: female, stature: 170 cm, mass: 65 kg, training: 3 years }\n^^^^^^^\n' +
        '  hint: keep one of the two\n' +
        'scenarios/athletes/a.yaml:3:1: "tests" is in two files; the first is scenarios/x.yaml:10\ntests:\n^^^^^\n' +
        '  hint: keep one of the two',
    ],
    [
      'a program in two files',
      scenario.replace('harder:', 'holds:'),
      usual,
      'scenarios/programs.yaml:3:3: "holds" is in two files; the first is scenarios/x.yaml:6\n  holds:\n  ^^^^^\n' +
        '  hint: keep one of the two',
    ],
    [
      'a cell in two included files',
      scenario,
      { ...usual, 'athletes/a.yaml': `${athlete}cells:\n  bar to body: = 1\n` },
      'scenarios/programs.yaml:9:3: "bar to body" is in two files; the first is scenarios/athletes/a.yaml:6\n' +
        '  bar to body: = best("back squat", 110 deg) / mass\n  ^^^^^^^^^^^\n  hint: keep one of the two',
    ],
    [
      'angles written in another way',
      scenario,
      { ...usual, 'programs.yaml': programs.replace('flexion', 'included') },
      'scenarios/programs.yaml:1:9: angles is "included" here and "flexion" in the scenario (scenarios/x.yaml:2)\n' +
        'angles: included\n        ^^^^^^^^\n' +
        '  hint: a scenario and the files it includes write joint angles in one way; rewrite those of one of them',
    ],
    [
      'angles not said',
      scenario,
      { ...usual, 'athletes/a.yaml': athlete.replace('angles: flexion\n', '') },
      'scenarios/athletes/a.yaml:2:1: angles is missing; an included file that has tests: says how it writes joint angles\n' +
        'tests:\n^^^^^\n  hint: write angles: flexion (0 = straight) or angles: included (180 = straight)',
    ],
    [
      'an included file that includes',
      scenario,
      { ...usual, 'athletes/a.yaml': `${athlete}include: programs.yaml\n` },
      'scenarios/athletes/a.yaml:5:1: an included file cannot include others\ninclude: programs.yaml\n^^^^^^^\n' +
        '  hint: name all files in the scenario itself',
    ],
    [
      'an included list',
      withInclude('a.yaml'),
      { 'a.yaml': '- 1\n' },
      'scenarios/a.yaml:1:1: an included file must be a group of lines\n- 1\n^\n  hint: write lines such as tests:',
    ],
    [
      'YAML that cannot be read',
      withInclude('a.yaml'),
      { 'a.yaml': 'chains: [\n' },
      'scenarios/a.yaml:1:9: "[" is never closed\nchains: [\n        ^\n  hint: put "]" after its last entry',
    ],
    [
      'a file that is not there',
      withInclude('[athletes/a.yaml, b.yaml]'),
      usual,
      'scenarios/x.yaml:3:28: there is no file b.yaml here\ninclude: [athletes/a.yaml, b.yaml]\n                           ^^^^^^',
    ],
    [
      'the same file by two spellings',
      withInclude('[athletes/a.yaml, ./athletes//a.yaml]'),
      usual,
      'scenarios/x.yaml:3:28: ./athletes//a.yaml is included twice\n' +
        'include: [athletes/a.yaml, ./athletes//a.yaml]\n                           ^^^^^^^^^^^^^^^^^^\n' +
        '  hint: keep one of the two',
    ],
    [
      'the scenario itself',
      withInclude('./x.yaml'),
      { './x.yaml': scenario },
      'scenarios/x.yaml:3:10: the scenario includes itself\ninclude: ./x.yaml\n         ^^^^^^^^\n' +
        '  hint: name another file, or delete this',
    ],
    [
      'no name',
      withInclude(''),
      usual,
      'scenarios/x.yaml:3:1: include names no file\ninclude: \n^^^^^^^\n' +
        '  hint: write, for example, include: [athletes/SN-04.yaml, equipment.yaml]',
    ],
    [
      'a number',
      withInclude('[5]'),
      usual,
      'scenarios/x.yaml:3:11: include must be the name of a file, or a list of such names\ninclude: [5]\n          ^\n' +
        '  hint: write, for example, include: [athletes/SN-04.yaml, equipment.yaml]',
    ],
  ])('%s', async (_, text, files, expected) => {
    expect(await said(text, files)).toBe(expected);
  });

  it('takes at most twenty files, and reads none of more', () => {
    const list = Array.from({ length: 21 }, (_, i) => `f${i}.yaml`).join(', ');
    const { problems } = readWithIncludes(file, withInclude(`[${list}]`), () => {
      throw new Error('was read');
    });
    expect(problems?.map(({ message, at }) => [message, at?.line])).toEqual([
      ['include names 21 files; at most 20 are read', 3],
    ]);
  });

  it('lets a file without angles say nothing of them, in scenarios of either kind', async () => {
    const chains = 'chains:\n  heavy: { link: 20 mm, length: 1.2 m, cord: 1 m }\n';
    const found = readWithIncludes(
      file,
      'title: T\nangles: included\ninclude: chains.yaml\n',
      beside({ 'chains.yaml': chains }),
    );
    expect(found.problems).toBeUndefined();
  });

  it('bounds the files together as one file is bounded', () => {
    const long = (letter: string) => `${letter}: "${'x'.repeat(4_000)}"\n`;
    const large = `note: [${'"xxxx",'.repeat(9_000)}1]\n`;
    const problem = (files: Readonly<Record<string, string>>) => {
      const text = `title: T\ninclude: [${Object.keys(files).join(', ')}]\n`;
      const [first] = readWithIncludes(file, text, beside(files)).problems ?? [];
      return [first?.message, first?.at?.file, first?.at?.line];
    };
    const many = (count: number, text: string) =>
      Object.fromEntries(Array.from({ length: count }, (_, i) => [`f${i}.yaml`, text]));
    expect(problem(many(3, long('a').repeat(100)))[0]).toContain('1 MB together');
    expect(problem(many(3, large))).toEqual([
      'the scenario and the files it includes hold more than 20000 lines and entries together',
      file,
      2,
    ]);
    const chains = (start: number) =>
      `chains:\n${Array.from({ length: 160 }, (_, i) => `  c${start + i}: { weighs: 9 kg/m }\n`).join('')}`;
    expect(problem({ 'a.yaml': chains(0), 'b.yaml': chains(200) })).toEqual([
      'together, the files have 320 chains; at most 300 are read',
      file,
      2,
    ]);
  });

  it('is refused where there is no folder', async () => {
    const { problems } = await run('x.yaml', scenario);
    expect(formatProblems(problems ?? [], () => scenario)).toBe(
      'x.yaml:3:1: other files can be included only where the scenario is a file in a folder\n' +
        'include: [athletes/a.yaml, programs.yaml]\n^^^^^^^\n' +
        '  hint: save it, or write here what the other files hold',
    );
  });

  it('hints at include: for a name near it', async () => {
    expect(
      await said(scenario.replace('include:', 'includes:').replace(/^programs:\n.*\n/m, '')),
    ).toContain('did you mean "include"?');
  });
});
