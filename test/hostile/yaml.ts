import {
  body,
  hold,
  laughs,
  named,
  plain,
  program,
  type Row,
  squat,
  swapped,
  withCells,
} from './parts.ts';

export const yamlTricks: readonly Row[] = [
  ['billion laughs', 'grow nine values to a billion', () => `l0: &l0 ha\n${laughs}${plain}`],
  ['nested aliases', 'grow inside one list', () => `${plain}x: [&a [1, 2], &b [*a, *a], [*b, *b]]`],
  ['recursive alias', 'hold itself', () => `${plain}x: &x { inside: *x }\n`],
  ['alias without anchor', 'refer to nothing', () => swapped('65 kg', '*nobody')],
  [
    'merge key',
    'take values from elsewhere',
    () => `base: &b { mass: 65 kg }\n${swapped('mass: 65 kg', '<<: *b')}`,
  ],
  [
    'merge key of a plain group',
    'merge without anchor',
    () => swapped('mass: 65 kg', '<<: { mass: 65 kg }'),
  ],
  ['merge key of many anchors', 'merge a list', () => `${plain}x: { <<: [*a, *b] }\n`],
  [
    'function tag',
    'make a function',
    () => swapped('65 kg', "!!js/function 'function () { throw 1 }'"),
  ],
  ['regexp tag', 'make a slow pattern', () => swapped('65 kg', '!!js/regexp /(a+)+$/')],
  ['binary tag', 'make bytes', () => swapped('65 kg', '!!binary aGVsbG8=')],
  ['set tag', 'make a set', () => `${plain}x: !!set { a, b }\n`],
  ['ordered map tag', 'make an ordered map', () => `${plain}x: !!omap [a: 1, b: 2]\n`],
  ['custom tag', 'make a class', () => swapped('65 kg', '!person { name: x }')],
  [
    'python tag',
    'make an object of another language',
    () => swapped('65 kg', '!!python/object/apply:os.system ["id"]'),
  ],
  ['tag directive', 'give a tag another meaning', () => `%TAG ! tag:x.org,2000:\n---\n${plain}`],
  ['old yaml', 'read yes as true', () => `%YAML 1.1\n---\n${plain}`],
  ['include tag', 'read a file of the system', () => swapped('65 kg', '!include /etc/passwd')],
  ['include key', 'read a neighbouring file', () => `${plain}include: ../../package.json\n`],
  [
    'path as code',
    'write a report elsewhere',
    () => swapped('code: A', 'code: ../../../etc/passwd'),
  ],
  ['path as program', 'write elsewhere by a name', () => named('../../../../tmp/owned')],
  ['several documents', 'hide a second scenario', () => `${plain}---\n${plain}`],
  ['document end', 'hide text after the end', () => `${plain}...\nhidden: 1\n`],
  ['duplicate keys', 'say two masses', () => swapped('mass: 65 kg', 'mass: 65 kg, mass: 95 kg')],
  ['duplicate programs', 'say a program twice', () => `${plain}${program('holds')}`],
  [
    'duplicate by quotes',
    'hide that a key is written twice',
    () => `${plain}${program('"hol\\x64s"')}`,
  ],
  [
    'number keys',
    'name a program by a number',
    () => `${body}programs:\n${program('1')}${program('1.0')}${program('0x1')}`,
  ],
  ['null key', 'name a program by nothing', () => `${body}programs:\n${program('~')}`],
  ['true key', 'name a program by yes', () => `${body}programs:\n${program('true')}`],
  ['list as key', 'name a value by a list', () => `${plain}? [a, b]\n: 1\n`],
  ['group as key', 'name a value by a group', () => `${plain}? { a: 1 }\n: 1\n`],
  ['date as value', 'give a date for a mass', () => swapped('65 kg', '2026-09-14')],
  ['date tag', 'make a date', () => swapped('65 kg', '!!timestamp 2026-09-14')],
];

export const prototypes: readonly Row[] = [
  '__proto__',
  'constructor',
  'prototype',
  'toString',
  'hasOwnProperty',
].flatMap((key): Row[] => {
  const group = `{ polluted: yes, prototype: { polluted: yes } }`;
  return [
    [`${key} at the top`, 'change every object', () => `${plain}${key}: ${group}\n`],
    [
      `${key} of the athlete`,
      'change every object from inside',
      () => swapped('mass:', `${key}: ${group}, mass:`),
    ],
    [
      `${key} in work`,
      'change every object from a list',
      () => swapped('sets:', `${key}: ${group}, sets:`),
    ],
    [
      `${key} as a program`,
      'name a program so',
      () => `${body}programs:\n${program(key)}${program('b')}`,
    ],
    [`${key} as a cell`, 'name a cell so', () => withCells(`  ${key}: = 1 + 1\n  b: = ${key}\n`)],
    [
      `${key} as a machine`,
      'name equipment so',
      () =>
        `${plain}machines: { ${key}: { load: 40 kg, torque: { 10 deg: 70 N m, 60 deg: 80 N m } } }\nchains: { ${key}: { link: 13 mm, length: 2 m } }\nlifts: { ${key}: { leads: knee } }\n`,
    ],
    [
      `${key} as a lift`,
      'look it up among lifts',
      () => swapped(hold, squat.replace('back squat', key)),
    ],
    [
      `${key} as what is held`,
      'look it up among actions',
      () => swapped('hold: knee extension', `hold: ${key}`),
    ],
    [
      `${key} as the target`,
      'look it up among targets',
      () => swapped('action: knee extension', `action: ${key}`),
    ],
    [`like ${key}`, 'copy what is no program', () => `${plain}  b: { like: ${key} }\n`],
    [
      `change ${key}`,
      'change a prototype by its place',
      () =>
        `${plain}  b: { like: holds, change: { ${key}.polluted: yes, work.1.${key}.polluted: yes, work.${key}: 1 } }\n`,
    ],
    [
      `change ${key} itself`,
      'put a prototype in place',
      () =>
        `${plain}  b: { like: holds, change: { ${key}: { polluted: yes }, work.1.${key}: { polluted: yes } } }\n`,
    ],
    [
      `${key} beside like`,
      'put a prototype beside a copy',
      () => `${plain}  b: { like: holds, ${key}: { polluted: yes } }\n`,
    ],
  ];
});
