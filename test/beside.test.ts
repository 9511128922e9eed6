import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { besideInRevision } from '../src/commands/besideInRevision.ts';
import { besideOnDisk } from '../src/commands/besideOnDisk.ts';
import { mostBytes } from '../src/notebook/text/mostBytes.ts';

/** Files beside a scenario, on disk and in git: only ordinary ones of its own folder are read. */

const folder = mkdtempSync(join(tmpdir(), 'torqueleaf-beside-'));
const repository = join(folder, 'notes');
const scenarios = join(repository, 'scenarios');
const write = (name: string, text: string) => writeFileSync(join(scenarios, name), text);

function git(...args: string[]): void {
  const who = ['-c', 'user.name=Coach', '-c', 'user.email=coach@example.org'];
  const settings = { GIT_CONFIG_GLOBAL: '/dev/null', GIT_CEILING_DIRECTORIES: folder };
  const own = Object.entries(process.env).filter(([name]) => !/^GIT_/.test(name));
  const env = { ...Object.fromEntries(own), ...settings };
  const ran = spawnSync('git', [...who, ...args], { cwd: repository, env, encoding: 'utf8' });
  expect(ran.stderr).toBe('');
}

beforeAll(() => {
  mkdirSync(join(scenarios, 'athletes'), { recursive: true });
  write('x.yaml', 'include: a.yaml\n');
  write('athletes/a.yaml', 'committed: 1\n');
  write('-n', 'dash: 1\n');
  write('exact.yaml', '#'.repeat(mostBytes));
  write('large.yaml', '#'.repeat(mostBytes + 1));
  writeFileSync(join(folder, 'notes', 'secret.yaml'), 'secret: 1\n');
  symlinkSync('athletes/a.yaml', join(scenarios, 'within.yaml'));
  symlinkSync('athletes', join(scenarios, 'people'));
  symlinkSync('../secret.yaml', join(scenarios, 'out.yaml'));
  symlinkSync('..', join(scenarios, 'up'));
  symlinkSync('scenarios', join(repository, 'elsewhere'));
  git('init', '--quiet', '--initial-branch=main');
  git('add', '.');
  git('commit', '--quiet', '--message', 'Note');
  write('athletes/a.yaml', 'staged: 1\n');
  git('add', '.');
  write('athletes/a.yaml', 'changed: 1\n');
});
afterAll(() => rmSync(folder, { recursive: true }));

describe('beside a scenario on disk', () => {
  const beside = (path: string) => besideOnDisk(join(scenarios, 'x.yaml'))(path);

  it('an ordinary file is read, also through a link that stays in the folder', () => {
    expect(beside('athletes/a.yaml')).toEqual({ text: 'changed: 1\n' });
    expect(beside('./athletes//a.yaml')).toEqual({ text: 'changed: 1\n' });
    expect(beside('within.yaml')).toEqual({ text: 'changed: 1\n' });
    expect(beside('people/a.yaml')).toEqual({ text: 'changed: 1\n' });
    expect(besideOnDisk(join(repository, 'elsewhere', 'x.yaml'))('within.yaml')).toEqual({
      text: 'changed: 1\n',
    });
  });

  it('as many bytes are read as a scenario may have, and no more', () => {
    expect(beside('exact.yaml')).toEqual({ text: '#'.repeat(mostBytes) });
    expect(beside('large.yaml')).toEqual({ fault: 'large.yaml is larger than 1 MB' });
  });

  it.each([
    ['out.yaml', "out.yaml is a link that leads out of the scenario's folder"],
    ['up/secret.yaml', "up/secret.yaml is a link that leads out of the scenario's folder"],
    [
      '../secret.yaml',
      "../secret.yaml leads out of a folder; name files in the scenario's folder or in folders below it",
    ],
    ['athletes', 'athletes is a folder; name a file in it'],
    ['', 'the name of the file is empty'],
    ['none.yaml', "there is no file none.yaml in the scenario's folder"],
    ['x.yaml/y', "there is no file x.yaml/y in the scenario's folder"],
    [
      join(scenarios, 'x.yaml'),
      `${join(scenarios, 'x.yaml')} is no name from the scenario's folder, such as athletes/SN-04.yaml`,
    ],
  ])('"%s" is refused', (path, fault) => {
    expect(beside(path)).toEqual({ fault });
  });
});

describe('beside a scenario of a git revision', () => {
  it.each([
    ['HEAD:scenarios/x.yaml', repository, 'committed'],
    ['main:scenarios/x.yaml', scenarios, 'committed'],
    ['HEAD:./x.yaml', scenarios, 'committed'],
    ['HEAD:./scenarios/x.yaml', repository, 'committed'],
    [':scenarios/x.yaml', repository, 'staged'],
    [':scenarios/x.yaml', scenarios, 'staged'],
    [':./x.yaml', scenarios, 'staged'],
    [':0:scenarios/x.yaml', repository, 'staged'],
  ])('%s has the file of its revision', (asked, cwd, key) => {
    const beside = besideInRevision(asked, cwd);
    expect(beside('athletes/a.yaml')).toEqual({ text: `${key}: 1\n` });
    expect(beside('./athletes/a.yaml')).toEqual({ text: `${key}: 1\n` });
  });

  it.each([
    ['HEAD:scenarios/x.yaml', repository],
    [':scenarios/x.yaml', repository],
  ])('%s: links, folders, large files and what is not there are refused', (asked, cwd) => {
    const beside = besideInRevision(asked, cwd);
    expect(beside('-n')).toEqual({ text: 'dash: 1\n' });
    expect(beside('exact.yaml')).toEqual({ text: '#'.repeat(mostBytes) });
    expect(beside('large.yaml')).toEqual({ fault: 'large.yaml is larger than 1 MB' });
    for (const link of ['within.yaml', 'out.yaml', 'up', 'people'])
      expect(beside(link)).toEqual({ fault: `${link} is no ordinary file in this revision` });
    for (const none of [
      'people/a.yaml',
      'up/secret.yaml',
      'none.yaml',
      '*.yaml',
      'note:b.yaml',
      ':(top)*',
    ])
      expect(beside(none)).toEqual({ fault: `there is no file ${none} in this revision` });
    expect(beside('../secret.yaml')).toHaveProperty('fault');
    expect(beside('athletes')).toHaveProperty('fault');
  });
});
