import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { didYouMean, slipsBetween } from '../../src/notebook/didYouMean.ts';
import {
  capProblems,
  formatProblem,
  formatProblems,
  type Problem,
  sortProblems,
} from '../../src/notebook/text/problem.ts';

const at = (file: string, line: number, col: number): Problem => ({
  code: 'x',
  message: `${file}${line}${col}`,
  at: { file, line, col },
});

test('problems are sorted by file, line and column', () => {
  const sorted = sortProblems([at('b', 1, 1), at('a', 10, 1), at('a', 2, 9), at('a', 2, 3)]);
  expect(sorted.map(({ message }) => message)).toEqual(['a23', 'a29', 'a101', 'b11']);
});

test('twenty are shown and the rest counted', () => {
  const many = Array.from({ length: 23 }, (_, index) => at('a', index + 1, 1));
  expect(capProblems(many).shown.length).toBe(20);
  expect(formatProblems(many).split('\n').slice(-2)).toEqual([
    'a:20:1: a201',
    'and 3 more problems',
  ]);
  expect(formatProblems(many.slice(0, 21)).endsWith('\nand 1 more problem')).toBe(true);
  expect(formatProblems(many, undefined, 22).endsWith('a:22:1: a221\nand 1 more problem')).toBe(
    true,
  );
  expect(formatProblems(many, undefined, Number.POSITIVE_INFINITY)).toBe(
    many.map(({ message }, index) => `a:${index + 1}:1: ${message}`).join('\n'),
  );
  expect(formatProblems([])).toBe('');
});

test('the caret stands under its place, with tabs and in long lines', () => {
  const tabbed = { ...at('a', 1, 3), hint: 'h' };
  expect(formatProblem(tabbed, () => '\tab')).toBe('a:1:3: a13\n\tab\n\t ^\n  hint: h');
  const long = formatProblem(at('a', 1, 501), () => `${'x'.repeat(500)}Y${'z'.repeat(500)}`);
  const [, line = '', caret = ''] = long.split('\n');
  expect(line.length).toBe(100);
  expect(line[caret.indexOf('^')]).toBe('Y');
});

test('text from a file cannot command the terminal', () => {
  const problem = { code: 'x', message: 'red \u001b[31m', at: { file: 'a', line: 1, col: 1 } };
  expect(formatProblem(problem, () => '\u001b[2Jx')).toBe('a:1:1: red �[31m\n�[2Jx\n^');
});

describe('did you mean', () => {
  // Counted by hand.
  test.each<[string, string, number]>([
    ['squat', 'squat', 0],
    ['sqaut', 'squat', 1],
    ['squt', 'squat', 1],
    ['ca', 'abc', 3],
    ['', 'abc', 3],
  ])('%s and %s are %i slips apart', (from, to, slips) => {
    expect(slipsBetween(from, to)).toBe(slips);
  });

  test('the nearest within a third of the word', () => {
    const lifts = ['back squat', 'front squat'];
    expect(didYouMean('bak sqaut', lifts)).toBe('back squat');
    expect(didYouMean('Back Squat', lifts)).toBe('back squat');
    expect(didYouMean('bench press', lifts)).toBeUndefined();
    expect(didYouMean('st', ['to', 'sit'])).toBe('sit');
  });

  test('slips do not depend on the direction, and none means equal', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 8 }), fc.string({ maxLength: 8 }), (a, b) => {
        expect(slipsBetween(a, b)).toBe(slipsBetween(b, a));
        expect(slipsBetween(a, b) === 0).toBe(a === b);
      }),
    );
  });
});
