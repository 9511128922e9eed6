import { describe, expect, it } from 'vitest';
import { told } from './formulas.ts';

/**
 * A scenario may come from a stranger. Each formula tries something: none may take long, take much
 * memory, change anything or answer with more than a value. What they try follows the behaviour of
 * mathjs's own evaluate (its documentation and history) and common attacks on expression languages.
 */
const hostile: readonly (readonly [tries: string, formula: string])[] = [
  ['allocate a matrix', 'zeros(1e9)'],
  ['allocate a matrix of ones', 'ones(1e5, 1e5)'],
  ['allocate an identity matrix', 'identity(1e5)'],
  ['write far beyond a list', 'a=[1]; a[1e9]=5'],
  ['draw many random numbers', 'random([3e4,3e4])'],
  ['pick many random numbers', 'pickRandom([1,2],1e8)'],
  ['take a hundred million roots', 'nthRoots(1,1e8)'],
  ['list all subsets', 'setPowerset(1:25)'],
  ['multiply matrices block by block', 'kron(ones(1000,1000),ones(1000,1000))'],
  ['double a list again and again', 'concat([1],[1])'],
  ['define a function that calls itself', 'fib(n) = n < 2 ? n : fib(n-1) + fib(n-2)'],
  ['define a function and call it', 'f(x)=x^2; f(3)'],
  ['raise an endless whole number', 'bigint(3)^bigint(30000000)'],
  ['raise a fraction', 'fraction(3,7)^2e7'],
  ['count combinations', 'combinations(1e15,5e14)'],
  ['take the factorial of a million', 'factorial(1e6)'],
  ['take a factorial by its sign', '170!!!!!!!!'],
  ['invert a large matrix', 'inv(random([1500,1500]))'],
  ['find eigenvalues', 'eigs(random([200,200]))'],
  ['sum a slow series', 'zeta(0.5+1e7 i)'],
  ['rewrite a polynomial', 'rationalize("(x+y+z+1)^12")'],
  ['simplify text as code', 'simplify("x+x")'],
  ['derive text as code', 'derivative("x^2", "x")'],
  ['parse text as code', 'parse("1+1")'],
  ['evaluate text as code', 'evaluate("1+1")'],
  ['compile text as code', 'compile("1+1").evaluate()'],
  ['print a million digits', 'format(bignumber(1)/3,{notation:"fixed",precision:1e8})'],
  ['a very long range', '1:1e9'],
  ['a very fine range', '0:1e-9:1'],
  ['a range that never ends', '0:0:10'],
  ['a range that runs the wrong way', '10:-1:0'],
  ['a range of not-a-number steps', '0:(0/0):10'],
  ['a range to infinity', '0:1e308*10'],
  ['measure a huge range', 'size(1:3e7)'],
  ['resize a list', 'resize([1],[1e5,1e5])'],
  ['create a unit', 'createUnit("zork")'],
  ['redefine the kilogram', 'createUnit("kg","2 g",{override:true})'],
  ['change the settings of the library', 'config({number:"BigNumber"})'],
  ['import code', 'import({f: 1}, {override: true})'],
  ['import a module', 'import("fs")'],
  ['require a module', 'require("fs")'],
  ['read the environment', 'process.env'],
  ['end the program', 'process.exit(1)'],
  ['reach the global object', 'globalThis'],
  ['reach this', 'this'],
  ['call the function constructor', 'constructor("return 1")()'],
  ['reach a constructor by a dot', 'sum.constructor'],
  ['reach a constructor by brackets', 'sum["constructor"]'],
  ['reach a constructor of text', '"a".constructor'],
  ['reach a constructor of a list', '[1].constructor'],
  ['reach the prototype', '__proto__'],
  ['set the prototype', '__proto__ = 1'],
  ['an object with a prototype', '{__proto__: 1}'],
  ['an object', '{a: 1}'],
  ['reach hidden data of a list', '[1,2]._data'],
  ['call a method', '[1,2].map(sqrt)'],
  ['map over a list', 'map([1,2], sqrt)'],
  ['filter with a function', 'filter([1,2], f(x) = x > 1)'],
  ['call what a call returns', 'sum(1)(2)'],
  ['call a bracket', '(sum)([1,2])'],
  ['hasOwnProperty', 'hasOwnProperty("a")'],
  ['toString', 'toString()'],
  ['valueOf', 'valueOf()'],
  ['assign a name', 'mass = 1'],
  ['assign into a list', 'x[1] = 2'],
  ['several expressions', '1; 2; 3'],
  ['several lines', '1\n2\n3'],
  ['a comment that hides code', '1 # evaluate("2")'],
  ['deep brackets', `${'('.repeat(400)}1${')'.repeat(400)}`],
  ['deep lists', `${'['.repeat(400)}1${']'.repeat(400)}`],
  ['many signs', `${'-'.repeat(900)}1`],
  ['many nots', `${'not '.repeat(200)}true`],
  ['many powers', `2${'^2'.repeat(400)}`],
  ['many choices', `${'1 > 0 ? 1 : '.repeat(80)}0`],
  ['a long sum', '1+'.repeat(490).concat('1')],
  ['a long product of lists', '[1,2]*'.repeat(150).concat('1')],
  ['a long text', `"${'a'.repeat(5000)}"`],
  ['a very long number', `1${'0'.repeat(900)}`],
  ['a number too large', '1e400'],
  ['a number too small', '1e-400'],
  ['a power too large', '10 ^ 10 ^ 10'],
  ['infinity by name', 'Infinity'],
  ['not a number by name', 'NaN'],
  ['nothing by name', 'null'],
  ['undefined by name', 'undefined'],
  ['the imaginary unit', 'i'],
  ['the version of the library', 'version'],
  ['text that grows', '"a" + "b"'],
  ['text as a number', '"3" + 1'],
  ['text times text', '"3" * "4"'],
  ['true as a number', 'true + 1'],
  ['transpose', "[1,2]'"],
  ['element-wise power', '[1,2] .^ 1e9'],
  ['bits', '1 << 31'],
  ['a bit or', '1 | 2'],
  ['a remainder', '7 % 3'],
  ['convert a unit to another', '60 deg to rad'],
  ['a pipe of functions', 'chain(3).add(4).done()'],
  ['a help page', 'help(sin)'],
  ['a timer', 'setTimeout(1, 1)'],
  ['a fetch', 'fetch("http://127.0.0.1")'],
  ['characters that look like others', 'ѕum([1,2])'],
  ['invisible characters', 'su\u200bm([1,2])'],
  ['text that runs from right to left', '1 + \u202e2'],
  ['a list too long to write', `[${'1,'.repeat(480)}1]`],
  ['a sum over the longest list', 'sum(sum(1:2000)*(1:2000))'],
  ['nesting of calls', `${'abs('.repeat(60)}1${')'.repeat(60)}`],
  ['an empty formula', ''],
  ['only blanks', '   '],
  ['an unfinished formula', '1 +'],
];

describe('formulas of a stranger', () => {
  it('are at least 80', () => {
    expect(hostile.length).toBeGreaterThanOrEqual(80);
  });

  it.each(hostile)('%s', (_, formula) => {
    const [memory, start] = [process.memoryUsage().heapUsed, performance.now()];
    const answer = told(formula);
    expect(performance.now() - start).toBeLessThan(1000);
    expect(process.memoryUsage().heapUsed - memory).toBeLessThan(512e6);
    if (typeof answer === 'object' && 'says' in answer) {
      expect(answer.says).toMatch(/^[a-z].{5,}/);
      return;
    }
    // What is answered is a plain value of bounded size, nothing that could be called.
    expect(['number', 'string', 'boolean', 'object']).toContain(typeof answer);
    if (typeof answer === 'object') expect(answer.every((x) => typeof x === 'number')).toBe(true);
  });

  it('leave nothing behind: the same formulas mean the same afterwards', () => {
    for (const [, formula] of hostile) told(formula);
    expect(told('2 kg + 3 kg')).toBe(5);
    expect(told('1/3')).toBe(1 / 3);
    expect(Object.hasOwn(Object.prototype, 'polluted')).toBe(false);
  });

  it('that are refused by name say so in plain words (whole messages)', () => {
    expect([
      told('zeros(1e9)'),
      told('createUnit("kg","2 g",{override:true})'),
      told('f(x) = x'),
      told('1:1e9'),
      told('sum["constructor"]'),
      told(`${'('.repeat(400)}1`),
    ]).toEqual([
      { says: 'calls "zeros", which is no function here' },
      { says: 'holds braces | quote the whole formula if YAML made them' },
      { says: 'defines a function | formulas use the functions that are there' },
      {
        says: 'has a range that is empty or too long | from the smaller to the larger in at most 2000 steps',
      },
      { says: 'picks a part by a dot or square brackets | use at(vector, angle)' },
      { says: 'is nested deeper than 40 levels' },
    ]);
  });
});
