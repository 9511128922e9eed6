import { describe, expect, test } from 'vitest';
import { readScenario } from '../../src/notebook/readScenario.ts';
import { formatProblems } from '../../src/notebook/text/problem.ts';
import { readSource } from '../../src/notebook/text/source.ts';

const shown = (text: string): string =>
  formatProblems(readSource('f.yaml', text).problems ?? [], () => text);

describe('YAML slips, in the words of a coach', () => {
  test.each<[string, string, string]>([
    [
      'tab',
      'a:\n\tb: 1\n',
      'f.yaml:2:1: the line is indented with a tab\n\tb: 1\n^\n  hint: use spaces instead',
    ],
    [
      'no space after the colon',
      'a: 1\nb:2\nc: 3\n',
      'f.yaml:2:1: there is no space after the colon\nb:2\n^^^\n  hint: write "b: 2"',
    ],
    [
      'no colon',
      'title: x\nathlete\n  code: 1\n',
      'f.yaml:2:1: there is no colon in "athlete"\nathlete\n^^^^^^^\n  hint: a line reads "name: value", or "name:" with an indented group below it',
    ],
    [
      'duplicate key',
      'a: 1\nb: 2\na: 3\n',
      'f.yaml:3:1: "a" is written twice; the first is on line 1\na: 3\n^\n  hint: keep one of the two',
    ],
    [
      'open bracket',
      'a: [1, 2\nb: 3\n',
      'f.yaml:1:4: "[" is never closed\na: [1, 2\n   ^\n  hint: put "]" after its last entry',
    ],
    [
      'colon in a value',
      'note: ratio: 2\n',
      'f.yaml:1:7: a second ": " in one value\nnote: ratio: 2\n      ^^^^^^^^\n  hint: put the value in quotes: "ratio: 2"',
    ],
    [
      'indent under a value',
      'a:\n  b: 1\n   c: 2\n',
      'f.yaml:3:4: this line is indented by 3 spaces, its neighbours by 2; lines of one group start in the same column\n   c: 2\n   ^^^^',
    ],
    [
      'open quote',
      'a: "x\nb: 2\n',
      'f.yaml:1:4: the quote " is never closed\na: "x\n   ^\n  hint: put " at the end of the value',
    ],
    [
      'alias',
      'a: &x 1\nb: *x\n',
      'f.yaml:1:4: "&x" names a value for later use, which is not read here\na: &x 1\n   ^^^^\n  hint: delete it, or put the whole value in quotes if it is a text\nf.yaml:2:4: "*x" refers to another value, which is not read here\nb: *x\n   ^^\n  hint: write the value out, or put it in quotes if it is a text',
    ],
    [
      'alias to nothing',
      'a: *x\n',
      'f.yaml:1:4: "*x" refers to another value, which is not read here\na: *x\n   ^^\n  hint: write the value out, or put it in quotes if it is a text',
    ],
    [
      'tag',
      'a: !x\n',
      'f.yaml:1:4: a value cannot start with "!"\na: !x\n   ^\n  hint: put the value in quotes',
    ],
    [
      'two documents',
      'a: 1\n---\nb: 2\n',
      'f.yaml:2:1: the file holds more than one document\n---\n^\n  hint: keep one scenario a file, without lines of --- or ... between',
    ],
    [
      'empty',
      '# nothing yet\n',
      'f.yaml:1:1: the file is empty\n# nothing yet\n^\n  hint: start with title:, angles: and athlete:',
    ],
    [
      'no-break space',
      'a:\n\u00a0 b: 1\n',
      'f.yaml:2:1: the line starts with a no-break or other special space, which indents nothing\n\u00a0 b: 1\n^\n  hint: delete it and type ordinary spaces',
    ],
    [
      'a name that JavaScript would swallow',
      '__proto__: 1\n',
      'f.yaml:1:1: this cannot be the name of a value\n__proto__: 1\n^^^^^^^^^\n  hint: a line reads "name: value"',
    ],
  ])('%s', (_, text, expected) => {
    expect(shown(text)).toBe(expected);
  });
});

describe('texts that would harm the parser are refused before it', () => {
  test('a file of 2 MB', () => {
    const text = `title: ${'x'.repeat(2_000_000)}`;
    expect(readSource('f.yaml', text).problems).toEqual([
      {
        code: 'file-too-large',
        message: 'the file is 2.0 MB; a scenario is at most 1 MB',
        at: { file: 'f.yaml', line: 1, col: 1 },
        hint: 'split it: one scenario a file',
      },
    ]);
  });

  test('many thousand keys', () => {
    const text = Array.from({ length: 30_000 }, (_, index) => `k${index}: 1\n`).join('');
    expect(readSource('f.yaml', text).problems).toMatchObject([
      { message: 'the file has more than 20000 lines and entries' },
    ]);
  });

  test.each<[string, string]>([
    ['brackets', `a: ${'['.repeat(1000)}`],
    ['braces over lines', '{\n'.repeat(5000)],
    ['dashes', `${'- '.repeat(1000)}x`],
    ['indents', Array.from({ length: 100 }, (_, depth) => `${' '.repeat(depth)}a:\n`).join('')],
  ])('deep nesting of %s', (_, text) => {
    expect(readSource('f.yaml', text).problems).toMatchObject([
      {
        message: 'nested more than 60 levels deep',
        hint: 'a scenario needs about six levels; look for brackets that are never closed',
      },
    ]);
  });

  test('sixty levels are still parsed', () => {
    expect(readSource('f.yaml', `a: ${'['.repeat(60)}${']'.repeat(60)}`).source).toBeDefined();
  });
});

describe('places', () => {
  const text = '\ufeffa: 1\r\nb:\r\n  - { c: 22, d: }\r\n';
  const { source } = readSource('f.yaml', text);

  test('of values and of keys', () => {
    expect(source?.at(['b', 0, 'c'])).toEqual({ file: 'f.yaml', line: 3, col: 10, endCol: 12 });
    expect(source?.at(['b', 0, 'c'], { key: true })).toMatchObject({ line: 3, col: 7, endCol: 8 });
  });

  test('of what is empty or missing', () => {
    expect(source?.at(['b', 0, 'd'])).toMatchObject({ line: 3, col: 14 });
    expect(source?.at(['b', 0, 'nothing'])).toMatchObject({ line: 3, col: 5 });
    expect(source?.at(['nothing'])).toMatchObject({ line: 1, col: 1 });
  });
});

test.each([
  '',
  '[]',
  '7',
  'null',
  '? [1]\n: 2',
  'a: .nan',
  '%YAML 1.1\n---\na: yes',
  '\u0000',
  '- - -',
])('no text makes the reader throw: %j', async (text) => {
  expect((await readScenario('f.yaml', text)).problems?.length).toBeGreaterThan(0);
});
