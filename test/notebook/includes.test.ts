import { describe, expect, it } from 'vitest';
import { differences } from '../../src/notebook/differences.ts';
import { placeInText, withValue } from '../../src/notebook/placeInText.ts';
import { formatProblems } from '../../src/notebook/problem.ts';
import { readWithIncludes } from '../../src/notebook/readWithIncludes.ts';
import type { Beside, Source } from '../../src/notebook/source.ts';
import { run, runSource } from '../../src/run.ts';

/** A scenario and the files it includes read as one; expected lines are counted by hand. */

const athlete = `angles: flexion
athlete: { code: A, reference: female, stature: 170 cm, mass: 65 kg, training: 3 years }
tests:
  - { lift: back squat, to: 110 deg, best: 80 kg }
`;
const programs = `angles: flexion
programs:
  holds:
    weeks: 8
    sessions per week: 2
    work:
      - { hold: knee extension, at: 90 deg, effort: 90 %, sets: 4, reps: 5, seconds: 5, rest: 90 s }
cells:
  bar to body: = best("back squat", 110 deg) / mass
`;
const scenario = `title: T
angles: flexion
include: [athletes/a.yaml, programs.yaml]
target: { action: knee extension, from: 75 deg, to: 100 deg }
programs:
  harder: { like: holds, change: { work.1.effort: 95 % } }
cells:
  twice: = 2 * bar_to_body
`;
const file = 'scenarios/x.yaml';

const beside =
  (files: Readonly<Record<string, string>>): Beside =>
  (path) => {
    const text = files[path];
    return text === undefined ? { fault: `there is no file ${path} here` } : { text };
  };
const usual = { 'athletes/a.yaml': athlete, 'programs.yaml': programs };

function joined(text = scenario, files: Readonly<Record<string, string>> = usual): Source {
  const { source, problems } = readWithIncludes(file, text, beside(files));
  if (!source) throw new Error(formatProblems(problems));
  return source;
}

/** The column at which something first stands in a text. */
const columnOf = (text: string, written: string) =>
  (text.split('\n').find((line) => line.includes(written)) ?? '').indexOf(written) + 1;

/** What is said of a scenario, with the lines it points at. */
async function said(text = scenario, files: Readonly<Record<string, string>> = usual) {
  const read = readWithIncludes(file, text, beside(files));
  const ran = read.source ? await runSource(read.source) : read;
  return formatProblems(ran.problems ?? [], (name) => read.texts.get(name));
}

const withInclude = (value: string) =>
  scenario.replace('[athletes/a.yaml, programs.yaml]', () => value);

describe('a scenario with included files', () => {
  it('comes to the same as one file that holds all', async () => {
    const whole = scenario
      .replace(/^include.*\n/m, '')
      .replace('programs:\n', () => /programs:[\s\S]*(?=cells)/.exec(programs)?.[0] ?? '')
      .replace('cells:\n', () => /cells:[\s\S]*/.exec(programs)?.[0] ?? '')
      .concat(athlete.replace('angles: flexion\n', ''));
    const [one, several] = [await run(file, whole), await run(file, scenario, beside(usual))];
    const gains = ({ results }: typeof one) =>
      results?.ranking.map(({ program }) => [program.name, program.landing.meanGain]);
    expect(gains(several)).toHaveLength(2);
    expect(gains(several)).toEqual(gains(one));
    // 2 × 80 kg / 65 kg, by hand; the heaviest single is searched for, to some tenths of a gram.
    const twice = several.results?.cells.find(({ cell }) => cell.name === 'twice');
    expect(twice?.value).toBeCloseTo(160 / 65, 4);
  });

  it('has its own names first, then those of each file, and no include: left', () => {
    const value = Object(joined().value);
    expect(Object.keys(value.programs)).toEqual(['harder', 'holds']);
    expect(Object.keys(value.cells)).toEqual(['twice', 'bar to body']);
    expect(value.include).toBeUndefined();
  });

  it('may name one file without brackets', () => {
    expect(Object(joined(withInclude('programs.yaml')).value).programs.holds.weeks).toBe(8);
  });

  it('knows in which file each value stands', () => {
    const source = joined();
    const at = (...path: (string | number)[]) => {
      const { file: where, line, col } = source.at(path);
      return [where, line, col];
    };
    expect(at('title')).toEqual([file, 1, 8]);
    expect(at('athlete', 'mass')).toEqual([
      'scenarios/athletes/a.yaml',
      2,
      columnOf(athlete, '65 kg'),
    ]);
    expect(at('tests', 0, 'best')).toEqual([
      'scenarios/athletes/a.yaml',
      4,
      columnOf(athlete, '80 kg'),
    ]);
    expect(at('programs', 'harder', 'like')).toEqual([file, 6, 19]);
    expect(at('programs', 'holds', 'weeks')).toEqual([
      'scenarios/programs.yaml',
      4,
      columnOf(programs, '8'),
    ]);
    expect(at('angles')).toEqual([file, 2, 9]);
    // What is in no file is placed as in the scenario.
    expect(at('programs', 'other')[0]).toBe(file);
    expect(at('athlete', 'limits')[0]).toBe('scenarios/athletes/a.yaml');
  });

  it('shows a problem with the name, line and caret of its file', async () => {
    const wrong = { ...usual, 'athletes/a.yaml': athlete.replace('170 cm', '170 kg') };
    expect(await said(scenario, wrong)).toBe(
      'scenarios/athletes/a.yaml:2:49: stature is a length; "kg" is a mass — write it in m, cm, in or ft, for example "168 cm"\n' +
        'athlete: { code: A, reference: female, stature: 170 kg, mass: 65 kg, training: 3 years }\n' +
        '                                                ^^^^^^',
    );
  });

  it('places what is wrong in a copy of an included program where it stands', async () => {
    const wrong = { ...usual, 'programs.yaml': programs.replace('rest: 90 s', 'rest: 90 m') };
    const lines = (await said(scenario, wrong)).split('\n').filter((line) => /yaml:/.test(line));
    expect(lines.map((line) => line.split(': ')[0])).toEqual([
      `scenarios/programs.yaml:7:${columnOf(programs, '90 s')}`,
      `scenarios/programs.yaml:7:${columnOf(programs, '90 s')}`,
    ]);
    expect(await said(scenario.replace('95 %', '95 kg'))).toContain(
      `${file}:6:${columnOf(scenario, '95 %')}: `,
    );
  });

  it('places what is wrong in an included formula inside it', async () => {
    const slip = programs.replace('/ mass', '/ * mass');
    const shown = await said(scenario, { ...usual, 'programs.yaml': slip });
    expect(shown).toContain(
      `scenarios/programs.yaml:9:${columnOf(slip, '* mass')}: the formula of`,
    );
    expect(shown).toContain('\n  bar to body: = best("back squat", 110 deg) / * mass\n');
  });

  it('names the file of a line in a circle of cells', async () => {
    const circle = {
      ...usual,
      'programs.yaml': programs.replace('= best("back squat", 110 deg)', '= twice'),
    };
    expect(await said(scenario, circle)).toMatch(
      /\(line 8\).*\(line 9 of scenarios\/programs.yaml\)|\(line 9 of scenarios\/programs.yaml\).*\(line 8\)/,
    );
  });

  it('tells in which file the value of a place stands, for whoever changes it there', () => {
    const source = joined();
    const { place } = placeInText(source, 'athlete.mass');
    expect(place).toMatchObject({ file: 'scenarios/athletes/a.yaml', written: '65 kg' });
    if (!place) throw new Error('no place');
    const changed = withValue(source.texts.get(place.file) ?? '', place, '70 kg');
    expect(changed).toBe(athlete.replace('65 kg', '70 kg'));
    expect(placeInText(source, 'target.from').place).toMatchObject({ file, written: '75 deg' });
    expect(placeInText(source, 'include').fault).toContain('there is no "include"');
  });

  it('is compared with another by values, each with its file', () => {
    const heavier = { ...usual, 'athletes/a.yaml': athlete.replace('65 kg', '70 kg') };
    const found = differences(joined(), joined(scenario.replace('title: T', 'title: U'), heavier));
    expect(found).toEqual([
      {
        path: ['athlete', 'mass'],
        place: 'athlete.mass',
        a: { text: '65 kg', line: 2, file: 'scenarios/athletes/a.yaml' },
        b: { text: '70 kg', line: 2, file: 'scenarios/athletes/a.yaml' },
      },
      {
        path: ['title'],
        place: 'title',
        a: { text: 'T', line: 1 },
        b: { text: 'U', line: 1 },
      },
    ]);
  });
});

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
