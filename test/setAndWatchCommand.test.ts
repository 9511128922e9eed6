import { type ChildProcess, spawn } from 'node:child_process';
import {
  chmodSync,
  lstatSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { startingScenario } from '../src/notebook/startingScenario.ts';
import { bundle, command } from './command.ts';

/** The bundled command that writes into a scenario, and the one that watches it. */

const folder = mkdtempSync(join(tmpdir(), 'torqueleaf-set-'));
const children: ChildProcess[] = [];
afterAll(() => {
  for (const child of children) child.kill();
  rmSync(folder, { recursive: true });
});

function fileOf(name: string, text: string): string {
  const file = join(folder, name);
  writeFileSync(file, text);
  return file;
}

describe('set', () => {
  it('changes the value alone: mark, line ends and mode stay, and nothing is left beside', () => {
    const text = `\ufeff${startingScenario.replaceAll('\n', '\r\n')}`;
    const file = fileOf('windows.yaml', text);
    chmodSync(file, 0o640);
    const ran = command('set', file, 'athlete.mass', '66 kg');
    expect(ran).toMatchObject({ status: 0, stderr: '' });
    expect(ran.stdout).toMatch(/^athlete\.mass: 65 kg → 66 kg \(line 9\)\.\n/);
    expect(readFileSync(file, 'utf8')).toBe(text.replace('mass: 65 kg', 'mass: 66 kg'));
    expect(statSync(file).mode & 0o777).toBe(0o640);
    expect(readdirSync(folder).filter((name) => name.includes('.part'))).toEqual([]);
  });

  it('writes to what a link leads to', () => {
    const file = fileOf('real.yaml', startingScenario);
    const link = join(folder, 'link.yaml');
    symlinkSync('real.yaml', link);
    expect(command('set', link, 'athlete.code', 'AB-02').status).toBe(0);
    expect(lstatSync(link).isSymbolicLink()).toBe(true);
    expect(readFileSync(file, 'utf8')).toBe(startingScenario.replace('AB-01', 'AB-02'));
  });

  it('writes nothing where the value is wrong, exit 1', () => {
    const file = fileOf('kept.yaml', startingScenario);
    const ran = command('set', file, 'athlete.mass', '66 cm');
    expect(ran).toMatchObject({ status: 1, stdout: '' });
    expect(ran.stderr).toContain('kept.yaml:9:9: mass is a mass; "cm" is a length');
    expect(ran.stderr).toContain('  mass: 66 cm\n        ^^^^^\n');
    expect(ran.stderr).toMatch(/kept\.yaml was left as it is\n$/);
    expect(readFileSync(file, 'utf8')).toBe(startingScenario);
  });

  it('says what is wrong with a place, exit 2', () => {
    const file = fileOf('place.yaml', startingScenario);
    expect(command('set', file, 'athlete.mas', '66 kg')).toEqual({
      status: 2,
      stdout: '',
      stderr: 'there is no "mas" in athlete; did you mean "mass"?\n',
    });
  });

  it('writes into no file that is not UTF-8: its signs would be lost', () => {
    const bytes = Buffer.from(startingScenario.replace('AB-01', 'J\u00fc-01'), 'latin1');
    const file = join(folder, 'latin.yaml');
    writeFileSync(file, bytes);
    const ran = command('set', file, 'athlete.mass', '66 kg');
    expect(ran).toMatchObject({ status: 2, stdout: '' });
    expect(ran.stderr).toContain('has signs that are not UTF-8; save it as UTF-8 first');
    expect(readFileSync(file).equals(bytes)).toBe(true);
  });
});

/** With one program, so that an evaluation costs little. */
const small = startingScenario.slice(0, startingScenario.indexOf('  squat to thigh level'));

describe('seek --write', () => {
  it('puts the only value found into the file', () => {
    const file = fileOf('seek.yaml', small);
    const ran = command(
      'seek',
      file,
      'athlete.mass',
      '60 kg : 70 kg',
      'mass / 2',
      '33 kg',
      '--write',
    );
    expect(ran).toMatchObject({ status: 0, stderr: '' });
    expect(ran.stdout).toMatch(/^mass \/ 2 is 33 kg at athlete\.mass = 66 kg\.\n/);
    expect(ran.stdout).toMatch(/\nmass \/ 2 is now 33 kg\.\n$/);
    expect(readFileSync(file, 'utf8')).toBe(small.replace('65 kg', '66 kg'));
  });

  it('writes nothing where there are two, or none, exit 1', () => {
    const file = fileOf('two.yaml', small);
    // (mass − 62 kg)² is 4 kg² at 60 and at 64 kg.
    const two = ['59 kg : 67 kg', '(mass - 62 kg)^2', '4 kg^2', '--write'];
    const ran = command('seek', file, 'athlete.mass', ...two);
    expect(ran).toMatchObject({
      status: 1,
      stderr:
        'nothing was written: there is more than one such value; choose one and write it with torqueleaf set\n',
    });
    const none = command('seek', file, 'athlete.mass', '60 kg : 70 kg', 'mass', '80 kg', '--write');
    expect(none).toMatchObject({
      status: 1,
      stderr: 'nothing was written: there is no such value\n',
    });
    expect(readFileSync(file, 'utf8')).toBe(small);
  });
});

describe('compare --programs', () => {
  it('compares two programs of a file', () => {
    const file = 'scenarios/ski-deep-range.yaml';
    const ran = command('compare', file, '--programs', 'deep squat', 'box squat');
    expect(ran).toMatchObject({ status: 0, stderr: '' });
    expect(ran.stdout).toContain('a is "deep squat"; b is "box squat".');
  });

  it('says how it is called, exit 2', () => {
    const file = 'scenarios/ski-deep-range.yaml';
    expect(command('compare', file, '--programs', 'deep squat')).toEqual({
      status: 2,
      stdout: '',
      stderr: 'write one scenario and two of its programs: compare FILE --programs "A" "B"\n',
    });
  });
});

/** Waits until a running command has printed some words after all that was waited for before. */
class Listener {
  private text = '';
  private from = 0;
  private readonly child: ChildProcess;

  constructor(child: ChildProcess) {
    this.child = child;
    children.push(child);
    for (const stream of [child.stdout, child.stderr])
      stream?.setEncoding('utf8').on('data', (part: string) => {
        this.text += part;
      });
  }

  async hears(words: RegExp): Promise<void> {
    for (let tries = 0; tries < 1200; tries++) {
      const found = words.exec(this.text.slice(this.from));
      if (found) {
        this.from += found.index + found[0].length;
        return;
      }
      await new Promise((resolve) => setTimeout(resolve, 50));
    }
    throw new Error(`never said ${words} in: ${this.text}`);
  }

  /** Ends it as Ctrl-C would; answers how it ended. */
  async end(): Promise<number | null> {
    const ended = new Promise<number | null>((resolve) => this.child.once('exit', resolve));
    this.child.kill('SIGINT');
    return ended;
  }
}

describe('watch', () => {
  it('tells each save, also one by renaming, by halves, with problems, after it was gone; Ctrl-C ends it with 0', async () => {
    const file = fileOf('watched.yaml', startingScenario);
    const listener = new Listener(spawn('node', [bundle, 'watch', file]));
    await listener.hears(/Which program/);
    await listener.hears(/watching .*watched\.yaml; Ctrl-C ends it/);

    writeFileSync(file, startingScenario.replace('effort: 90 %', 'effort: 60 %'));
    await listener.hears(/Saved:\n- programs\.long holds\.work\.1\.effort: 90 % → 60 %/);

    const beside = fileOf('watched.yaml~', startingScenario.replace('65 kg', '72 kg'));
    renameSync(beside, file);
    await listener.hears(/athlete\.mass: 65 kg → 72 kg/);

    // As an editor that empties the file, then writes it in two parts.
    const twice = startingScenario.replace('AB-01', 'AB-02');
    writeFileSync(file, '');
    writeFileSync(file, twice.slice(0, 700));
    writeFileSync(file, twice);
    await listener.hears(/athlete\.code: AB-01 → AB-02/);

    writeFileSync(file, startingScenario.replace('170 cm', '170 kg'));
    await listener.hears(/it has problems; [^:]*\n.*watched\.yaml:8:12: stature is a length/);

    rmSync(file);
    await listener.hears(/watched\.yaml is gone; waiting for it/);
    writeFileSync(file, twice);
    await listener.hears(/The file reads again\. Saved:\nNo value changed\./);
    expect(await listener.end()).toBe(0);
  });

  it('watches the files that it includes, and set writes into them', async () => {
    const [head = '', tail = ''] = startingScenario.split('athlete:');
    const [her = '', rest = ''] = tail.split('tests:');
    const included = fileOf('her.yaml', `athlete:${her}`);
    const file = fileOf('whole.yaml', `include: her.yaml\n${head}tests:${rest}`);
    const listener = new Listener(spawn('node', [bundle, 'watch', file]));
    await listener.hears(/Ctrl-C ends it/);
    const set = command('set', file, 'athlete.mass', '72 kg');
    expect(set).toMatchObject({ status: 0, stderr: '' });
    expect(set.stdout).toMatch(/^athlete\.mass: 65 kg → 72 kg \(line 5 of .*her\.yaml\)\.\n/);
    expect(readFileSync(included, 'utf8')).toBe(`athlete:${her.replace('65 kg', '72 kg')}`);
    await listener.hears(/Saved:\n- athlete\.mass: 65 kg → 72 kg \(line\s+5\s+of\s/);
    writeFileSync(included, `athlete:${her.replace('170 cm', '170 kg')}`);
    await listener.hears(/her\.yaml:4:12: stature is a length.*\n {2}stature: 170 kg/);
    expect(await listener.end()).toBe(0);
  });

  it('waits for a file with problems to be mended', async () => {
    const file = fileOf('mended.yaml', startingScenario.replace('170 cm', '170 kg'));
    const listener = new Listener(spawn('node', [bundle, 'watch', file]));
    await listener.hears(/the ranking comes with the first save without any/);
    await listener.hears(/Ctrl-C ends it/);
    writeFileSync(file, startingScenario);
    await listener.hears(/Which program/);
    expect(await listener.end()).toBe(0);
  });

  it('refuses a file that is not there, exit 2', () => {
    expect(command('watch', join(folder, 'nowhere.yaml'))).toMatchObject({ status: 2, stdout: '' });
  });
});
