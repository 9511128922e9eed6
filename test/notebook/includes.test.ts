import { describe, expect, it } from 'vitest';
import { differences } from '../../src/notebook/text/differences.ts';
import { placeInText, withValue } from '../../src/notebook/text/placeInText.ts';
import { run } from '../../src/run.ts';
import {
  athlete,
  beside,
  columnOf,
  file,
  joined,
  programs,
  said,
  scenario,
  usual,
  withInclude,
} from './including.ts';

/** A scenario and the files it includes read as one; expected lines are counted by hand. */

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
