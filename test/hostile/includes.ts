import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { body, escapes, many, plain, type Row } from './parts.ts';
import { hostileTables } from './tables.ts';

/** What stands outside the scenario's folder, and must never be shown. */
export const secret = 'kept-from-strangers';

/**
 * Makes a folder for a hostile scenario, with whatever it might name, and a secret beside the folder.
 *
 * @returns the scenario's path
 */
export function hostileFolder(above: string): string {
  const outside = mkdtempSync(join(above, 'hostile-'));
  const folder = join(outside, 'scenarios');
  mkdirSync(join(folder, 'folder.yaml'), { recursive: true });
  writeFileSync(join(outside, 'secret.yaml'), `${secret}: [\n`);
  const write = (name: string, text: string) => writeFileSync(join(folder, name), text);
  symlinkSync('../secret.yaml', join(folder, 'out.yaml'));
  symlinkSync('..', join(folder, 'up'));
  symlinkSync('/dev/zero', join(folder, 'zero.yaml'));
  symlinkSync('/proc/self/environ', join(folder, 'environ.yaml'));
  symlinkSync('round.yaml', join(folder, 'round.yaml'));
  symlinkSync('hostile.yaml', join(folder, 'alias.yaml'));
  spawnSync('mkfifo', [join(folder, 'pipe.yaml')]);
  symlinkSync('pipe.yaml', join(folder, 'to-pipe.yaml'));
  write('hostile.yaml', `${plain}include: alias.yaml\n`);
  write('large.yaml', `# ${'x'.repeat(10_000_000)}\n`);
  write('there.yaml', 'include: back.yaml\n');
  write('back.yaml', 'include: there.yaml\n');
  write('deep.yaml', `note: ${'['.repeat(5_000)}\n`);
  write(
    'bytes.yaml',
    Buffer.from([0xff, 0xfe, 0, 0x80, 0x1b, 0x5b, 0x32, 0x4a]).toString('latin1'),
  );
  write('raw.yaml', `"${escapes}": 1\n`);
  write(
    'prototype.yaml',
    '__proto__: { polluted: yes }\nconstructor: { prototype: { polluted: yes } }\n',
  );
  for (let i = 0; i < 20; i++) {
    write(`half${i}.yaml`, `# ${'x'.repeat(500_000)}\n`);
    write(`entries${i}.yaml`, `note: [${'1,'.repeat(9_000)}1]\n`);
    const programs = many(30, (k) => `  p${i} ${k}: { weeks: 1.5 }\n`);
    write(`programs${i}.yaml`, `angles: flexion\nprograms:\n${programs}`);
  }
  for (const [name, text] of Object.entries(hostileTables)) write(name, text());
  return join(folder, 'hostile.yaml');
}

const including = (names: string) => () => `${plain}include: ${names}\n`;
const twenty = (name: string) => `[${many(20, (i) => `${name}${i}.yaml, `)}]`;

export const includes: readonly Row[] = [
  ['include up', 'read a file above the folder', including('../../etc/passwd')],
  [
    'include up and down',
    'leave the folder and come back',
    including('folder.yaml/../../secret.yaml'),
  ],
  ['include absolute', 'read a file of the computer', including('/etc/passwd')],
  ['include home', 'read a file of the user', including('~/.ssh/id_rsa')],
  ['include backslashes', 'leave the folder by another sign', including("'..\\secret.yaml'")],
  ['include drive', 'read a file of a drive', including("'C:secret.yaml'")],
  ['include link out', 'leave the folder by a link', including('out.yaml')],
  [
    'include folder link out',
    'leave the folder by a link to a folder',
    including('up/secret.yaml'),
  ],
  ['include link to a device', 'read without end', including('zero.yaml')],
  [
    'include link to the process',
    'read the settings of whoever runs it',
    including('environ.yaml'),
  ],
  ['include link to itself', 'follow a link without end', including('round.yaml')],
  ['include pipe', 'wait for ever', including('pipe.yaml')],
  ['include link to a pipe', 'wait for ever behind a link', including('to-pipe.yaml')],
  ['include itself', 'read itself without end', including('hostile.yaml')],
  ['include itself by another name', 'read itself without end', including('alias.yaml')],
  ['include a loop', 'read two files in turn without end', including('there.yaml')],
  ['include a folder', 'read a folder', including('folder.yaml')],
  ['include its own folder', 'read a folder', including('.')],
  ['include nothing there', 'a name without a file', including('none.yaml')],
  ['include behind a file', 'a name below a file', including('large.yaml/x.yaml')],
  ['include ten megabytes', 'read more than a scenario', including('large.yaml')],
  ['include deep brackets', 'overflow the stack from beside', including('deep.yaml')],
  ['include odd bytes', 'text that is none', including('bytes.yaml')],
  ['include raw signs', 'command the terminal from beside', including('raw.yaml')],
  ['include prototypes', 'change all objects from beside', including('prototype.yaml')],
  ['include a thousand', 'a thousand files', including(`[${many(1000, (i) => `f${i}.yaml, `)}]`)],
  ['include three hundred', 'as many as a list has', including(`[${'half0.yaml, '.repeat(300)}]`)],
  ['include much together', 'ten megabytes in twenty files', including(twenty('half'))],
  ['include many entries together', 'slow parsing in twenty files', including(twenty('entries'))],
  [
    'include many programs together',
    'six hundred wrong programs in twenty files',
    () => `${body}include: ${twenty('programs')}\n`,
  ],
  ['include NUL', 'end a name early', including('"out.yaml\\0.yaml"')],
  [
    'include control signs',
    'a name that commands the terminal',
    including('"\\e[2J.yaml\\r\\u202e"'),
  ],
  ['include a long name', 'a name of 4,000 letters', including('x'.repeat(4_000))],
  ['include a deep name', 'a path of many folders', including('a/'.repeat(2_000))],
  ['include a number', 'a value that is no name', including('5')],
  ['include a group', 'a value that is no name', including('{ toString: 1 }')],
  ['include lists', 'a value that is no name', including('[[out.yaml], null, yes, ""]')],
  ['include an address', 'read from the net', including('https://example.org/x.yaml')],
];
