import { startingScenario } from '../src/notebook/startingScenario.ts';

/** A scenario file that a stranger might send, and what it tries. */
export interface HostileScenario {
  readonly name: string;
  readonly tries: string;
  /** Made only when it is run: some are ten megabytes. */
  readonly text: () => string;
}

const title = 'title: Stronger in the deep knee range';
const body = `${title}
angles: flexion
athlete: { code: A, reference: female, stature: 170 cm, mass: 65 kg, training: 3 years }
tests:
  - { lift: back squat, to: 110 deg, best: 80 kg }
target: { action: knee extension, from: 75 deg, to: 100 deg }
`;
const squat =
  '{ lift: back squat, from: 0 deg, to: 115 deg, load: 78 %, sets: 4, reps: 6, tempo: 3-0-1, rest: 180 s }';
const hold =
  '{ hold: knee extension, at: 90 deg, effort: 90 %, sets: 4, reps: 5, seconds: 5, rest: 90 s }';

/** A program whose name is written as YAML wants it. */
const program = (name: string, work: readonly string[] = [hold], weeks = 8, sessions = 2) =>
  `  ${name}:
    weeks: ${weeks}
    sessions per week: ${sessions}
    work:
${work.map((entry) => `      - ${entry}\n`).join('')}`;
const plain = `${body}programs:\n${program('holds')}`;
const many = (count: number, line: (index: number) => string) =>
  Array.from({ length: count }, (_, index) => line(index)).join('');
const swapped = (from: string, to: string) => {
  if (!plain.includes(from)) throw new Error(`the plain scenario has no ${from}`);
  return plain.replace(from, () => to);
};
const named = (name: string) => `${body}programs:\n${program(JSON.stringify(name))}${program('b')}`;
const withCells = (cells: string) => `${plain}cells:\n${cells}`;
const megabytes = (count: number) => 'x'.repeat(count * 1_000_000);
const escapes = '\u001b[31mred\u001b]0;owned\u0007\u009b2J\u0000\u007f';
const overrides = 'safe\u202egpj.exe\u2066\u2069\u200f\u061c';
const laughs = many(9, (i) => `l${i + 1}: &l${i + 1} [${Array(9).fill(`*l${i}`).join(', ')}]\n`);

type Row = readonly [name: string, tries: string, text: () => string];

const yamlTricks: readonly Row[] = [
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

const prototypes: readonly Row[] = [
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

const sizes: readonly Row[] = [
  [
    'deep flow',
    'overflow the stack by brackets',
    () => `x: ${'['.repeat(100_000)}${']'.repeat(100_000)}\n`,
  ],
  [
    'deep flow groups',
    'overflow the stack by braces',
    () => `x: ${'{a: '.repeat(50_000)}1${'}'.repeat(50_000)}\n`,
  ],
  ['deep block', 'overflow the stack by indents', () => many(1300, (i) => `${' '.repeat(i)}a:\n`)],
  ['deep dashes', 'overflow the stack by dashes', () => `x:\n  ${'- '.repeat(10_000)}1\n`],
  ['deep questions', 'overflow the stack by complex keys', () => `${'? '.repeat(10_000)}1\n`],
  [
    'nesting just allowed',
    'use all levels that are read',
    () => `${plain}x: ${'['.repeat(58)}${']'.repeat(58)}\n`,
  ],
  ['huge text', 'ten megabytes in one value', () => swapped(title, `title: ${megabytes(10)}`)],
  ['huge comment', 'ten megabytes of nothing', () => `# ${megabytes(10)}\n${plain}`],
  ['million entries', 'a list of a million', () => `${plain}x: [${'1,'.repeat(1_000_000)}]\n`],
  ['million lines', 'a block list of a million', () => `x:\n${'- 1\n'.repeat(1_000_000)}`],
  ['million keys', 'a million names', () => many(1_000_000, (i) => `k${i}: 1\n`)],
  ['empty lines', 'ten megabytes of lines', () => '\n'.repeat(10_000_000)],
  [
    'as many keys as are read',
    'unknown names, each with a hint',
    () => plain + many(9_900, (i) => `programz${i}: 1\n`),
  ],
  [
    'as many long keys as are read',
    'costly hints',
    () => plain + many(3_000, (i) => `${'programs'.repeat(38)}${i}: 1\n`),
  ],
  [
    'as many wrong values as are read',
    'a problem each',
    () => `${plain}machines: [${'x,'.repeat(18_000)}x]\n`,
  ],
  [
    'wrong work',
    'ten thousand wrong entries',
    () => `${body}programs:\n${program('a', Array(9_000).fill('{ x: 1 }'))}`,
  ],
  [
    'wrong tests',
    'thousands of wrong tests',
    () => plain.replace('tests:\n', () => `tests:\n${'  - { lift: back squad }\n'.repeat(6_000)}`),
  ],
  [
    'wrong programs',
    'thousands of wrong programs',
    () => `${body}programs:\n${many(6_000, (i) => `  p${i}: { weeks: 1.5 }\n`)}`,
  ],
  [
    'one megabyte just allowed',
    'a text as long as is read',
    () => swapped(title, `title: ${'word '.repeat(199_000)}`),
  ],
  [
    'one long word',
    'a word as long as is read',
    () => swapped(title, `title: ${'x'.repeat(990_000)}`),
  ],
  [
    'one long emoji word',
    'a word of wide signs',
    () => swapped(title, `title: ${'👩‍👩‍👧'.repeat(50_000)}`),
  ],
  [
    'combining marks',
    'one letter under a hundred thousand marks',
    () => swapped(title, `title: e${'\u0301'.repeat(400_000)}`),
  ],
  [
    'many spaces',
    'slow patterns on white space',
    () => swapped(title, `title: "a${' '.repeat(900_000)}b"`),
  ],
  [
    'many spaces in a quantity',
    'slow patterns on a quantity',
    () => swapped('65 kg', `"65${' '.repeat(900_000)}x"`),
  ],
  ['many digits', 'slow patterns on digits', () => swapped('65 kg', `${'9'.repeat(900_000)}x`)],
  [
    'many dashes in a tempo',
    'slow patterns on a tempo',
    () => swapped(hold, squat.replace('3-0-1', '3-'.repeat(400_000))),
  ],
  [
    'expectation of blanks',
    'slow patterns on an expectation',
    () => withCells(`  a: { is: = 1, expect: "a${' to'.repeat(10_000)}${' '.repeat(200_000)}" }\n`),
  ],
  [
    'note of stars',
    'slow patterns of markdown',
    () => `${plain}note: "${'*_~`<&'.repeat(150_000)}"\n`,
  ],
  ['note of backticks', 'slow patterns of code', () => `${plain}note: "${'`'.repeat(900_000)}"\n`],
  [
    'note of backslashes',
    'slow patterns of escapes',
    () => `${plain}note: '${'\\'.repeat(900_000)}'\n`,
  ],
  [
    'note of paragraphs',
    'slow patterns of lines',
    () => `${plain}note: "${'\\n \\n'.repeat(150_000)}"\n`,
  ],
  [
    'long lift name',
    'a slow search for the meant name',
    () => swapped('hold: knee extension', `hold: ${'knee extension '.repeat(6_000)}`),
  ],
  ['long program name', 'a name of 100 kB', () => named('x'.repeat(100_000))],
  ['long cell name', 'a name of 100 kB', () => withCells(`  ? ${'x'.repeat(100_000)}\n  : = 1\n`)],
  [
    'long machine name',
    'a name of 100 kB',
    () =>
      `${plain}machines:\n  ? ${'x'.repeat(100_000)}\n  : { load: 40 kg, torque: { 10 deg: 70 N m, 60 deg: 80 N m } }\n`,
  ],
  ['long key', 'an unknown name of 900 kB', () => `${plain}? ${'x'.repeat(900_000)}\n: 1\n`],
];

const numbers: readonly Row[] = [
  '1e999',
  '.inf',
  '-.inf',
  '.nan',
  '0x7fffffff',
  '0o17777777777',
  '1e15',
  '-1',
  '0',
  '0.5',
  '1_000_000',
  '99999999999999999999',
  '5e-324',
].flatMap((value): Row[] => [
  [`sets of ${value}`, 'compute without end', () => swapped('sets: 4', `sets: ${value}`)],
  [`repetitions of ${value}`, 'compute without end', () => swapped('reps: 5', `reps: ${value}`)],
  [`weeks of ${value}`, 'compute without end', () => swapped('weeks: 8', `weeks: ${value}`)],
  [`sessions of ${value}`, 'compute without end', () => swapped('week: 2', `week: ${value}`)],
  [`mass of ${value}`, 'a body that cannot be', () => swapped('65 kg', `${value} kg`)],
  [`seconds of ${value}`, 'a hold without end', () => swapped('seconds: 5', `seconds: ${value}`)],
  [`best of ${value}`, 'a single that cannot be', () => swapped('80 kg', `${value} kg`)],
  [`angle of ${value}`, 'an angle that cannot be', () => swapped('at: 90 deg', `at: ${value} deg`)],
  [
    `within ${value}`,
    'a target without end',
    () => swapped('to: 100 deg }', `to: 100 deg, within: ${value} weeks }`),
  ],
  [
    `tempo of ${value}`,
    'a repetition without end',
    () => swapped(hold, squat.replace('3-0-1', `${value}-0-1`)),
  ],
  [`rest of ${value}`, 'a rest without end', () => swapped('rest: 90 s', `rest: ${value} s`)],
  [
    `minutes of ${value}`,
    'a week without end',
    () => `${plain}limits: { minutes per week: ${value} }\n`,
  ],
]);

const work: readonly Row[] = [
  [
    'a thousand programs',
    'a program a millisecond',
    () => `${body}programs:\n${many(1000, (i) => program(`p${i}`))}`,
  ],
  [
    'hundreds of long programs',
    'two years of squats each',
    () =>
      `${body}programs:\n${many(400, (i) => program(`p${i}`, [squat.replace('115', `${90 + (i % 30)}`)], 104, 14))}`,
  ],
  [
    'as many lifts as are computed',
    'compute as long as it may',
    () =>
      `${body}programs:\n${program(
        'a',
        Array.from({ length: 60 }, (_, i) => squat.replace('115', `${80 + i / 2}`)),
      )}`,
  ],
  [
    'a hundred different squats',
    'a search for each',
    () =>
      `${body}programs:\n${program(
        'a',
        Array.from({ length: 100 }, (_, i) => squat.replace('115', `${80 + i / 4}`)),
      )}`,
  ],
  [
    'ten thousand exercises',
    'one program without end',
    () => `${body}programs:\n${program('a', Array(10_000).fill(hold))}`,
  ],
  [
    'as many exercises as are read',
    'one program as long as is read',
    () => `${body}programs:\n${program('a', Array(2_300).fill(hold), 104, 14)}`,
  ],
  [
    'many squats in a program',
    'many lifts over two years',
    () => `${body}programs:\n${program('a', Array(1_500).fill(squat), 104, 14)}`,
  ],
  [
    'programs like a long one',
    'grow by copies',
    () =>
      `${body}programs:\n${program('a', Array(100).fill(squat), 104)}${many(2_000, (i) => `  b${i}: { like: a, change: { weeks: ${1 + (i % 100)} } }\n`)}`,
  ],
  [
    'chain of like',
    'copy a copy a thousand times',
    () =>
      `${plain}${many(3_000, (i) => `  p${i}: { like: ${i === 0 ? 'holds' : `p${i - 1}`} }\n`)}`,
  ],
  [
    'chain of like backwards',
    'overflow the stack by copies',
    () =>
      `${body}programs:\n${many(6_000, (i) => `  p${i}: { like: p${i + 1} }\n`)}${program('p6000')}`,
  ],
  [
    'chain of like with changes',
    'remember every change',
    () =>
      `${plain}${many(1_500, (i) => `  p${i}: { like: ${i === 0 ? 'holds' : `p${i - 1}`}, change: { work.1.x${i}: 1 } }\n`)}`,
  ],
  [
    'circle of like',
    'copy without end',
    () => `${body}programs:\n${many(5_000, (i) => `  p${i}: { like: p${(i + 1) % 5_000} }\n`)}`,
  ],
  ['like itself', 'copy itself', () => `${plain}  b: { like: b }\n`],
  [
    'change to a far place',
    'a list with a billion holes',
    () =>
      `${plain}  b: { like: holds, change: { work.1000000000.sets: 3, work.1000000000: 1, work.-1: 1, work.1e9: 2 } }\n`,
  ],
  [
    'change many steps',
    'a place without end',
    () => `${plain}  b: { like: holds, change: { ${'work.1.'.repeat(100_000)}sets: 3 } }\n`,
  ],
  [
    'thousands of changes',
    'costly changes',
    () => `${plain}  b: { like: holds, change: { ${many(6_000, (i) => `x${i}: 1, `)} } }\n`,
  ],
  [
    'thousands of deloads',
    'look up each week',
    () => `${plain}    deload: [${'{ week: 4, sets: half },'.repeat(4_000)}]\n`,
  ],
  [
    'thousands of tests',
    'fit them all',
    () =>
      plain.replace(
        'tests:\n',
        () =>
          `tests:\n${many(3_000, (i) => `  - { lift: back squat, to: ${60 + i / 60} deg, best: 80 kg }\n`)}`,
      ),
  ],
  [
    'thousands of trials',
    'fit them all',
    () =>
      plain.replace(
        'tests:\n',
        () =>
          `tests:\n  - { action: knee extension, contraction: isometric, unit: N m, with: { hip: 85 deg }, trials: { ${many(4_000, (i) => `${20 + i / 50} deg: [150, 155], `)} } }\n`,
      ),
  ],
  [
    'thousands of machine torques',
    'a curve without end',
    () =>
      `${plain}machines: { m: { load: 40 kg, torque: { ${many(6_000, (i) => `${i / 50} deg: 70 N m, `)} } } }\n`,
  ],
  [
    'thousands of machines',
    'read them all',
    () =>
      `${plain}machines:\n${many(2_000, (i) => `  m${i}: { load: 40 kg, torque: { 10 deg: 70 N m, 60 deg: 80 N m } }\n`)}`,
  ],
];

const formulas: readonly Row[] = [
  [
    'thousands of cells',
    'compute them all',
    () => withCells(many(9_000, (i) => `  c${i}: = mass * ${i}\n`)),
  ],
  [
    'chain of cells',
    'overflow the stack by cells',
    () => withCells(`${many(9_000, (i) => `  c${i}: = c${i + 1} + 1\n`)}  c9000: = 1\n`),
  ],
  [
    'circle of cells',
    'compute without end',
    () => withCells(many(5_000, (i) => `  c${i}: = c${(i + 1) % 5_000}\n`)),
  ],
  [
    'cells that need all others',
    'a graph with every edge',
    () =>
      withCells(
        many(
          1_500,
          (i) =>
            `  c${i}: = ${i === 0 ? '1' : Array.from({ length: Math.min(i, 100) }, (_, k) => `c${i - k - 1}`).join(' + ')}\n`,
        ),
      ),
  ],
  [
    'unknown names in cells',
    'a slow search for the meant name',
    () => withCells(many(4_000, (i) => `  cell${i}: = cel${i}x + 1\n`)),
  ],
  [
    'large vectors',
    'thousands of long lists',
    () => withCells(many(4_000, (i) => `  c${i}: = (1:2000) * ${i}\n`)),
  ],
  [
    'large vector sums',
    'a billion additions',
    () =>
      withCells(`  x: = 1:2000\n${many(1_500, (i) => `  c${i}: = sum(${'x*'.repeat(140)}x)\n`)}`),
  ],
  [
    'charts of large vectors',
    'draw thousands of charts',
    () => withCells(many(1_000, (i) => `  c${i}: { is: = (1:2000) * ${i}, chart: yes }\n`)),
  ],
  [
    'costly questions',
    'a search for each cell',
    () => withCells(many(1_000, (i) => `  c${i}: = best("back squat", ${80 + i / 40} deg)\n`)),
  ],
  [
    'many questions in a cell',
    'searches in one cell',
    () =>
      withCells(
        `  c: = ${Array.from({ length: 30 }, (_, i) => `best("back squat", ${80 + i} deg)`).join(' + ')}\n`,
      ),
  ],
  [
    'costly fields',
    'a search for each field',
    () =>
      `${body}programs:\n${many(300, (i) => program(`p${i}`, [squat.replace('78 %', `= 0.7 * best("back squat", ${80 + i / 10} deg)`)], 1))}`,
  ],
  ['huge formula', 'a formula of 900 kB', () => withCells(`  a: = ${'1+'.repeat(450_000)}1\n`)],
  [
    'huge formula in a field',
    'a formula of 900 kB',
    () => swapped('65 kg', `= ${'1+'.repeat(450_000)}1`),
  ],
  [
    'formulas in every field',
    'a formula where none belongs',
    () =>
      swapped('angles: flexion', 'angles: = 1').replaceAll('hold: knee extension', 'hold: = "x"'),
  ],
  ['formula overflows', 'infinity by a formula', () => swapped('65 kg', '= 1e308 * 1e308 * 1 kg')],
  [
    'escape in a formula',
    'send commands by a text',
    () => withCells('  a: = "\\u001b[31m"\n  b: { is: = 1, note: "\\e[31m", unit: "\\e[31m" }\n'),
  ],
  [
    'escape in an answer',
    'send commands by what a cell gives',
    () => withCells(`  a: '= "\\u001b[31mred\\u009b2J"'\n`),
  ],
  ['field asks of the system', 'run code in a field', () => swapped('65 kg', '= process.exit(1)')],
];

const words: readonly Row[] = [
  ['escapes', escapes],
  ['bidi overrides', overrides],
  ['lone surrogates', 'a\ud800b\udfff'],
  ['line breaks', 'a\n# heading\n\r\n| x |\u2028\u2029\u0085b\u000bb\u000c'],
  ['table and script', '| x | <script>alert(1)</script> |'],
  ['backticks', '`` ` ``` code | <b> `'],
  ['html in code', '`<img src=x onerror=alert(1)>` | `a|b`'],
  ['a fence', `${'a'.repeat(74)} \`\`\` ${'b'.repeat(76)} <script>`],
  ['links', '[x](javascript:alert(1)) ![x](http://x.org/y.png) <http://x.org> [x]: y'],
  ['blanks only', ' \t\u00a0\u200b '],
  ['marks', '# > - 1. *** ___ ~~~ === \\'],
  ['zero width signs', 'a\u200b\u200d\u2060\ufeff\u00adb\u{e0041}'],
].flatMap(([name = '', text = '']): Row[] => [
  [`program named by ${name}`, 'break out of tables or command the terminal', () => named(text)],
  [
    `title of ${name}`,
    'break out of a heading',
    () => `${swapped(title, `title: ${JSON.stringify(text)}`)}note: ${JSON.stringify(text)}\n`,
  ],
  [
    `athlete named by ${name}`,
    'break out of a line',
    () => swapped('code: A', `code: ${JSON.stringify(text)}`),
  ],
  [
    `cell of ${name}`,
    'break out of the table of cells',
    () =>
      withCells(
        `  ${JSON.stringify(text)}: { is: = 1:5, note: ${JSON.stringify(text)}, chart: yes }\n  b: ${JSON.stringify(`= ${text}`)}\n`,
      ),
  ],
  [
    `unknown names of ${name}`,
    'break out of a message',
    () =>
      swapped('hold: knee extension', `hold: ${JSON.stringify(text)}`)
        .replace('80 kg', () => JSON.stringify(text))
        .concat(`${JSON.stringify(text)}: 1\n`),
  ],
  [
    `circle named by ${name}`,
    'break out of a message by like',
    () =>
      `${plain}  ${JSON.stringify(text)}: { like: ${JSON.stringify(text)}, change: { ${JSON.stringify(text)}: 1 } }\n`,
  ],
  [`raw ${name}`, 'break the parser', () => swapped(title, `title: ${text}`)],
]);

const files: readonly Row[] = [
  ['byte order mark', 'hide the first key', () => `\ufeff${plain}`],
  ['two byte order marks', 'hide the first key twice', () => `\ufeff\ufeff${plain}`],
  ['utf-16', 'another encoding', () => Buffer.from(`\ufeff${plain}`, 'utf16le').toString('utf8')],
  [
    'bytes that are no text',
    'a picture',
    () => Buffer.from(Array.from({ length: 50_000 }, (_, i) => (i * 7919) % 256)).toString('utf8'),
  ],
  ['windows line ends', 'other line ends', () => plain.replaceAll('\n', '\r\n')],
  ['old line ends', 'line ends that are none', () => plain.replaceAll('\n', '\r')],
  ['tabs', 'indent by tabs', () => plain.replaceAll('  ', '\t')],
  ['empty', 'nothing', () => ''],
  ['blank', 'blanks only', () => ' \n\t\n'],
  ['only comments', 'comments only', () => '# a\n# b\n'],
  ['only a marker', 'an empty document', () => '---\n'],
  ['list at the top', 'a list', () => '- 1\n- 2\n'],
  ['text at the top', 'a text', () => 'hello'],
  ['number at the top', 'a number', () => '42'],
  ['json', 'another language', () => '{"title": "x", "athlete": null}'],
  ['html', 'a web page', () => '<!doctype html><script>alert(1)</script>'],
  [
    'lists everywhere',
    'lists for groups',
    () =>
      'title: []\nangles: []\nathlete: []\ntests: {}\ntarget: []\nprograms: []\ncells: []\nlifts: []\nmachines: []\nchains: []\nbands: []\nlimits: []\n',
  ],
  [
    'nothing everywhere',
    'empty values',
    () =>
      'title:\nangles:\nathlete:\ntests:\ntarget:\nprograms:\ncells:\nlifts:\nmachines:\nchains:\nbands:\nlimits:\n',
  ],
  [
    'nothing in lists',
    'empty entries',
    () =>
      'title: x\nangles: flexion\ntests: [~, [], {}]\nprograms: { a: ~, b: { work: [~, [], 1] } }\ncells: { a: ~, b: [] }\n',
  ],
  ['unclosed quote', 'a text without end', () => `${plain}note: "${'x\n'.repeat(5_000)}`],
  ['many faults', 'a fault a line', () => ']: [\n'.repeat(3_000)],
  ['the starting scenario', 'nothing at all', () => startingScenario],
];

/** Every file of the corpus, by name. */
export const hostileScenarios: readonly HostileScenario[] = [
  ...yamlTricks,
  ...prototypes,
  ...sizes,
  ...numbers,
  ...work,
  ...formulas,
  ...words,
  ...files,
].map(([name, tries, text]) => ({ name, tries, text }));
