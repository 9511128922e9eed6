import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { startingScenario } from '../src/notebook/startingScenario.ts';
import { bundle } from './command.ts';

/** The bundled command in a git repository of its own, away from the settings of whoever runs it. */

const folder = mkdtempSync(join(tmpdir(), 'torqueleaf-compare-'));
const repository = join(folder, 'notes');
const outside = join(folder, 'outside');
const own = Object.fromEntries(Object.entries(process.env).filter(([name]) => !/^GIT_/.test(name)));
const env = { ...own, GIT_CONFIG_GLOBAL: '/dev/null', GIT_CEILING_DIRECTORIES: folder };

function git(...args: string[]): void {
  const who = ['-c', 'user.name=Coach', '-c', 'user.email=coach@example.org'];
  const ran = spawnSync('git', [...who, ...args], { cwd: repository, env, encoding: 'utf8' });
  expect(ran.stderr).toBe('');
}

function commit(text: string): void {
  writeFileSync(join(repository, 'athletes', 'x.yaml'), text);
  git('add', '.');
  git('commit', '--quiet', '--message', 'Note');
}

const lighter = startingScenario.replace('mass: 65 kg', 'mass: 60 kg');
const heavier = startingScenario.replace('mass: 65 kg', 'mass: 70 kg');

beforeAll(() => {
  mkdirSync(join(repository, 'athletes'), { recursive: true });
  mkdirSync(outside);
  writeFileSync(join(outside, 'x.yaml'), startingScenario);
  git('init', '--quiet', '--initial-branch=main');
  commit(lighter);
  commit(startingScenario);
  writeFileSync(join(repository, 'athletes', 'x.yaml'), heavier);
});
afterAll(() => rmSync(folder, { recursive: true }));

function compareIn(cwd: string, ...args: string[]) {
  const { status, stdout, stderr } = spawnSync('node', [bundle, 'compare', ...args], {
    cwd,
    env,
    encoding: 'utf8',
  });
  return { status, stdout: stdout.replace(/\s+/g, ' '), stderr };
}

describe('compare', () => {
  it('sets the file as committed beside the file as it is, from any folder', () => {
    const inFolder = compareIn(join(repository, 'athletes'), 'x.yaml');
    expect(inFolder.stderr).toBe('');
    expect(inFolder.status).toBe(0);
    expect(inFolder.stdout).toContain('a is HEAD:x.yaml; b is x.yaml.');
    expect(inFolder.stdout).toContain('athlete.mass: 65 kg (a, line 9); 70 kg (b, line 9)');
    const away = compareIn(outside, '../notes/athletes/x.yaml');
    expect(away.stdout).toContain('athlete.mass: 65 kg (a, line 9); 70 kg (b, line 9)');
  });

  it('sets revisions beside each other, named in git’s own ways', () => {
    const ran = compareIn(repository, 'HEAD~1:athletes/x.yaml', 'main:./athletes/x.yaml');
    expect(ran).toMatchObject({ status: 0, stderr: '' });
    expect(ran.stdout).toContain('athlete.mass: 60 kg (a, line 9); 65 kg (b, line 9)');
  });

  it('locates the problems of a revision under its name, exit 1', () => {
    const bad = join(repository, 'bad.yaml');
    writeFileSync(bad, startingScenario.replace('170 cm', '170 kg'));
    git('add', 'bad.yaml');
    const ran = compareIn(repository, ':bad.yaml', 'athletes/x.yaml');
    expect(ran).toMatchObject({ status: 1, stdout: '' });
    expect(ran.stderr).toBe(
      ':bad.yaml:8:12: stature is a length; "kg" is a mass — write it in m, cm, in or ft, for example "168 cm"\n' +
        '  stature: 170 kg\n           ^^^^^^\n',
    );
  });

  it('takes included files from the revision of the scenario, and shows their lines', () => {
    const own = join(repository, 'shared');
    mkdirSync(join(own, 'people'), { recursive: true });
    const who = /^athlete:\n(?: .*\n)+/m.exec(startingScenario)?.[0] ?? '';
    writeFileSync(join(own, 'x.yaml'), startingScenario.replace(who, 'include: people/a.yaml\n'));
    writeFileSync(join(own, 'people', 'a.yaml'), who);
    git('add', 'shared');
    git('commit', '--quiet', '--message', 'Keep the athlete apart');
    writeFileSync(join(own, 'people', 'a.yaml'), who.replace('mass: 65 kg', 'mass: 70 kg'));
    const line = who.split('\n').findIndex((one) => one.includes('mass:')) + 1;
    const ran = compareIn(own, 'x.yaml');
    expect(ran).toMatchObject({ status: 0, stderr: '' });
    expect(ran.stdout).toContain(
      `athlete.mass: 65 kg (a, line ${line} of HEAD:people/a.yaml); 70 kg (b, line ${line} of people/a.yaml)`,
    );
    writeFileSync(join(own, 'people', 'a.yaml'), who.replace('170 cm', '170 kg'));
    const wrong = compareIn(own, 'x.yaml');
    expect(wrong).toMatchObject({ status: 1, stdout: '' });
    expect(wrong.stderr).toMatch(
      /^people\/a\.yaml:\d+:12: stature is a length.*\n {2}stature: 170 kg\n/,
    );
  });

  it('refuses wrong calls in one plain line, exit 2', () => {
    const refused = (cwd: string, ...args: string[]) => {
      const { status, stdout, stderr } = compareIn(cwd, ...args);
      expect({ status, stdout }).toEqual({ status: 2, stdout: '' });
      return stderr;
    };
    const x = 'athletes/x.yaml';
    expect([
      refused(repository, 'HEAD:athletes/x.yaml'),
      refused(repository, 'HEAD:athletes/y.yaml', x),
      refused(repository, 'HEAD:athletes', x),
      refused(repository, 'HEAD~7:athletes/x.yaml', x),
      refused(repository, 'HEAD:', x),
      refused(repository, 'athletes', x),
      refused(repository, 'y.yaml', x),
      refused(repository, '--', '--output=z:x.yaml', x),
      refused(repository, '--', x, '-p:x.yaml'),
      refused(outside, 'HEAD:x.yaml', 'x.yaml'),
      refused(outside, 'x.yaml'),
    ]).toEqual([
      'HEAD:athletes/x.yaml is compared with nothing; name a second scenario\n',
      'HEAD:athletes/y.yaml cannot be read: there is no file athletes/y.yaml in HEAD\n',
      'HEAD:athletes cannot be read: there is no file athletes in HEAD\n',
      'HEAD~7:athletes/x.yaml cannot be read: git knows no revision "HEAD~7"\n',
      'HEAD: names no file; write it after the colon\n',
      'athletes is a folder; name a file in it\n',
      'y.yaml cannot be read; is the name right?\n',
      '--output=z:x.yaml begins with "-"; write a revision and a file, such as HEAD~1:x.yaml\n',
      '-p:x.yaml begins with "-"; write a revision and a file, such as HEAD~1:x.yaml\n',
      'HEAD:x.yaml cannot be read: this folder is in no git repository\n',
      'HEAD:x.yaml cannot be read: this folder is in no git repository\n',
    ]);
  });
});
