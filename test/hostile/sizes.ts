import {
  body,
  hold,
  many,
  megabytes,
  named,
  plain,
  program,
  type Row,
  squat,
  swapped,
  title,
  withCells,
} from './parts.ts';

export const sizes: readonly Row[] = [
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
