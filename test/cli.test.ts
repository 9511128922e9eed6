import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { command } from './command.ts';

/** The bundled command as a coach runs it. */

const folder = mkdtempSync(join(tmpdir(), 'torqueleaf-'));
afterAll(() => rmSync(folder, { recursive: true }));

describe('report', () => {
  it('prints the ranking, writes the report, exits 0', () => {
    const out = join(folder, 'good');
    const ran = command('report', 'scenarios/ski-deep-range.yaml', '--out', out);
    expect(ran.status).toBe(0);
    expect(ran.stdout).toContain('Which program');
    expect(ran.stderr).toBe(`report: ${join(out, 'ski-deep-range.md')}\n`);
    expect(readFileSync(join(out, 'ski-deep-range.md'), 'utf8')).toBe(
      readFileSync('reports/ski-deep-range.md', 'utf8'),
    );
    expect(readdirSync(out)).toEqual(['ski-deep-range.md']);
  });

  it('writes nothing for a file with problems, prints no stack, exits 1', () => {
    const bad = join(folder, 'bad.yaml');
    writeFileSync(
      bad,
      readFileSync('scenarios/ski-deep-range.yaml', 'utf8').replace('168 cm', '168 kg'),
    );
    const out = join(folder, 'none');
    const ran = command('report', bad, '--out', out);
    expect(ran.status).toBe(1);
    expect(ran.stdout).toBe('');
    expect(ran.stderr).toContain(`${bad}:`);
    expect(ran.stderr).toContain('stature');
    expect(ran.stderr).not.toMatch(/\n\s+at /);
    expect(existsSync(out)).toBe(false);
  });

  it('--json gives the results as data and writes no file', () => {
    const out = join(folder, 'data');
    const ran = command('report', '--json', 'scenarios/ski-deep-range.yaml', '--out', out);
    expect(JSON.parse(ran.stdout)[0].format).toBe('torqueleaf results 1');
    expect(existsSync(out)).toBe(false);
  });
});

describe('check', () => {
  it('is content with the reports in the repository', () => {
    const ran = command('check');
    expect(ran.stdout).toBe(
      [
        'hamstrings-long',
        'knee-after-block',
        'push-off-chains',
        'season-deep-range',
        'ski-deep-range',
        'sprint-push-off',
      ]
        .map((name) => `scenarios/${name}.yaml: fine, report matches\n`)
        .join(''),
    );
    expect(ran.status).toBe(0);
    // Six scenarios in a process of its own: slow where many tests share a computer.
  }, 20_000);

  it('says what to do when a report is missing', () => {
    const ran = command('check', 'scenarios/ski-deep-range.yaml', '--out', join(folder, 'empty'));
    expect(ran.status).toBe(1);
    expect(ran.stdout).toContain('the scenario is fine; has no report yet');
    expect(ran.stdout).toContain('run: torqueleaf report scenarios/ski-deep-range.yaml --out');
  });
});

describe('ask', () => {
  const file = 'scenarios/ski-deep-range.yaml';

  it('answers a formula, with cells by their names, exits 0', () => {
    // 63.5 kg over 0.45359237 kg a pound.
    expect(command('ask', file, 'mass / 1 lb')).toMatchObject({ status: 0, stdout: '140\n' });
    expect(command('ask', file, '= bar_to_body * mass')).toMatchObject({ stdout: '85 kg\n' });
  });

  it('lists what formulas may use', () => {
    const { status, stdout } = command('ask', file);
    expect(status).toBe(0);
    expect(stdout).toContain('torque(joint action, [angle])');
  });

  it('says what is wrong with a formula, exits 2', () => {
    expect(command('ask', file, 'mass + stature')).toEqual({
      status: 2,
      stdout: '',
      stderr:
        'the formula does not fit: mass (kg) + length (m)\n  hint: both sides must be of one kind\n',
    });
  });

  it('a cell that is not as expected ends a report with 1, the report written', () => {
    const odd = join(folder, 'odd.yaml');
    writeFileSync(odd, readFileSync(file, 'utf8').replace('65 % to 90 %', '80 % to 90 %'));
    const out = join(folder, 'odd');
    const ran = command('report', odd, '--out', out);
    expect(ran.status).toBe(1);
    expect(ran.stderr).toContain('"weak side of the peak" is');
    expect(existsSync(join(out, 'odd.md'))).toBe(true);
  });
});

describe('what if', () => {
  it('sweep prints a row a value and leaves the file as it is', () => {
    const file = 'scenarios/ski-deep-range.yaml';
    const before = readFileSync(file, 'utf8');
    const ran = command('sweep', file, 'athlete.mass', '60 kg, 70 kg', 'mass');
    expect(ran.status).toBe(0);
    expect(ran.stdout).toContain('mass is largest at 70 kg (70 kg) and smallest at 60 kg (60 kg).');
    expect(readFileSync(file, 'utf8')).toBe(before);
  });

  const oneProgram = () => {
    const file = join(folder, 'one-program.yaml');
    const text = readFileSync('scenarios/ski-deep-range.yaml', 'utf8');
    const holds =
      '  long holds: { weeks: 1, sessions per week: 1, work: [{ hold: knee extension, at: 90 deg, effort: 90 %, sets: 4, reps: 5, seconds: 5, rest: 90 s }] }';
    writeFileSync(
      file,
      `${text.slice(0, text.indexOf('programs:'))}programs:\n${holds}\ncells: { bar: 65 kg }\n`,
    );
    return file;
  };

  it('sweep --by draws a map of two places, of one formula only', () => {
    const sets = ['programs.long holds.work.1.sets', '2 : 1 : 4'];
    const sweep = ['sweep', oneProgram(), ...sets, 'dose("long holds", 75 deg, 100 deg)'];
    const ran = command(...sweep, '--by', 'programs.long holds.work.1.reps = 4, 5');
    expect(ran.stderr).toBe('');
    expect(ran.status).toBe(0);
    expect(ran.stdout).toContain('[ ] largest');
    expect(ran.stdout.match(/^[234] /gmu)).toHaveLength(3);
    expect(command(...sweep, 'mass', '--by', 'athlete.mass = 60 kg').stderr).toBe(
      'with --by one formula is answered; leave out the others\n',
    );
    expect(command(...sweep, '--by', 'athlete.mass')).toEqual({
      status: 2,
      stdout: '',
      stderr:
        '--by is "athlete.mass"; write place = values, such as "athlete.mass = 60 kg : 5 kg : 70 kg"\n',
    });
  });

  it('seek finds a least value, and exits 1 where there is none', () => {
    const seek = ['seek', oneProgram(), 'cells.bar', '60 kg : 90 kg'];
    expect(command(...seek, '(bar - 70 kg)^2', 'least')).toEqual({
      status: 0,
      stdout: '(bar - 70 kg)^2 is least at cells.bar = 70 kg: 0 kg^2.\n',
      stderr: '',
    });
    expect(command(...seek, '3 kg', 'most').status).toBe(1);
  });

  it('the commands of the README work', () => {
    const lines = readFileSync('README.md', 'utf8').split('\n');
    const shown = lines.filter((line) => /^npx torqueleaf (?:sweep|seek) /u.test(line));
    expect(shown.length).toBeGreaterThanOrEqual(4);
    for (const line of shown) {
      const words = line.match(/"(?:\\.|[^"])*"|\S+/gu) ?? [];
      const args = words.slice(2).map((word) => word.replace(/^"|"$/gu, '').replaceAll('\\"', '"'));
      expect(command(...args)).toMatchObject({ status: 0, stderr: '' });
    }
  }, 60_000);

  it('start writes a scenario that check finds no fault in, never over another', () => {
    const file = join(folder, 'new.yaml');
    expect(command('start', file).status).toBe(0);
    expect(command('report', file, '--out', join(folder, 'new')).status).toBe(0);
    expect(command('start', file)).toEqual({
      status: 2,
      stdout: '',
      stderr: `${file} is there already; name another file\n`,
    });
  });

  it('schema prints the JSON Schema that the repository holds', () => {
    const { stdout } = command('schema');
    expect(stdout).toBe(readFileSync('scenarios/scenario.schema.json', 'utf8'));
  });
});

describe('lifts', () => {
  it('lists the catalogue by leading joint', () => {
    const ran = command('lifts');
    expect(ran.status).toBe(0);
    expect(ran.stdout).toContain('led by the knee');
    expect(ran.stdout).toContain('Romanian deadlift');
  });

  it('draws a lift and says what is assumed', () => {
    const ran = command('lifts', 'back squat');
    expect(ran.status).toBe(0);
    expect(ran.stdout).toContain('#');
    expect(ran.stdout).toContain('5 cm behind the shoulder joint (a guess)');
    expect(ran.stdout).toContain('Takes chains and bands.');
  });

  it('draws and lists a lift that a scenario declares', () => {
    const file = join(folder, 'own-lift.yaml');
    const scenario = readFileSync('scenarios/ski-deep-range.yaml', 'utf8');
    const own = 'lifts:\n  cambered squat: { like: back squat, assumed: [The bar hangs low.] }\n';
    writeFileSync(file, scenario.replace('target:', `${own}target:`));
    const drawn = command('lifts', 'cambered squat', '--file', file);
    expect(drawn.stderr).toBe('');
    expect(drawn.status).toBe(0);
    expect(drawn.stdout).toContain('#');
    expect(drawn.stdout).toContain('- The bar hangs low.');
    expect(command('lifts', '--file', file).stdout).toContain('cambered squat');
    expect(command('lifts', 'cambered squat').status).toBe(2);
  });

  it('says what is wrong with the scenario that should declare it, exits 1', () => {
    const file = join(folder, 'bad-lift.yaml');
    const scenario = readFileSync('scenarios/ski-deep-range.yaml', 'utf8');
    writeFileSync(file, scenario.replace('target:', 'lifts: { x: { like: back sqat } }\ntarget:'));
    const ran = command('lifts', 'x', '--file', file);
    expect(ran.status).toBe(1);
    expect(ran.stdout).toBe('');
    expect(ran.stderr).toContain('like is "back sqat"; the catalogue has no such lift\n');
    expect(ran.stderr).toContain('did you mean "back squat"?');
  });

  it('suggests the nearest name', () => {
    const ran = command('lifts', 'bak squat');
    expect(ran.status).toBe(2);
    expect(ran.stderr).toBe('there is no lift "bak squat"; did you mean "back squat"?\n');
  });
});

describe('wrong calls exit 2 with one plain line', () => {
  it.each([
    [['reprot'], 'unknown command'],
    [['report', '--jsn'], 'unknown option'],
    [['report', 'nowhere.yaml'], 'nowhere.yaml cannot be read; is the name right?\n'],
    [['report', 'scenarios'], 'scenarios is a folder; name the files in it (scenarios/*.yaml)\n'],
    [
      ['report', 'scenarios/ski-deep-range.yaml', '--out', 'package.json'],
      'package.json/ski-deep-range.md cannot be written; choose another folder with --out\n',
    ],
  ])('%j', (args, words) => {
    const ran = command(...args);
    expect(ran.status).toBe(2);
    expect(ran.stderr).toContain(words);
    expect(ran.stderr).not.toMatch(/\n\s+at /);
  });

  it('two files that would write the same report', () => {
    const twin = join(folder, 'ski-deep-range.yaml');
    writeFileSync(twin, readFileSync('scenarios/ski-deep-range.yaml', 'utf8'));
    const out = join(folder, 'twins');
    const ran = command('report', 'scenarios/ski-deep-range.yaml', twin, '--out', out);
    expect(ran.status).toBe(2);
    expect(ran.stderr).toContain('would both write ski-deep-range.md; rename one of them');
  });

  it('--help exits 0', () => {
    const ran = command('--help');
    expect(ran.status).toBe(0);
    expect(ran.stdout).toContain('report');
  });
});
