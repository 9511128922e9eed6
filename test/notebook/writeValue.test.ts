import { readdirSync, readFileSync } from 'node:fs';
import { isDeepStrictEqual } from 'node:util';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { startingScenario } from '../../src/notebook/startingScenario.ts';
import { differences } from '../../src/notebook/text/differences.ts';
import { dottedOf } from '../../src/notebook/text/placeInText.ts';
import { readWithIncludes } from '../../src/notebook/text/readWithIncludes.ts';
import { readSource, type Source } from '../../src/notebook/text/source.ts';
import { writeValue } from '../../src/notebook/text/writeValue.ts';

/**
 * A value written into a file. What is expected is the file itself with the value replaced by hand
 * (`String.replace`), or what a text editor would have left.
 */

function sourceOf(text: string): Source {
  const { source, problems } = readSource('f.yaml', text);
  if (!source) throw new Error(JSON.stringify(problems));
  return source;
}

function written(file: string | Source, place: string, value: string): string {
  const made = writeValue(typeof file === 'string' ? sourceOf(file) : file, place, value);
  if (!made.written) throw new Error(made.fault ?? JSON.stringify(made.problems));
  return made.written.text;
}

const fault = (text: string, place: string, value: string) =>
  writeValue(sourceOf(text), place, value).fault;

/** Every single value of plain data with its path. */
function scalars(value: unknown, path: (string | number)[] = []): [(string | number)[], unknown][] {
  if (typeof value !== 'object' || value === null) return value === null ? [] : [[path, value]];
  return Array.isArray(value)
    ? value.flatMap((one, i) => scalars(one, [...path, i]))
    : Object.entries(value).flatMap(([name, one]) => scalars(one, [...path, name]));
}

const nasty = [
  '# note with a\ttab and a trailing blank ',
  'title:   "Deep “knee” — Žluťoučký 🏋"   # said\tin quotes',
  "note: 'it''s hers'\t# a tab before the comment",
  'angles: flexion',
  '"athlete":',
  "   'code':    AB-01    ",
  '   mass   : 63.5 kg# no comment',
  '   lengths: {thigh: 41 cm,   "shank": "40 cm" ,}   # flow',
  '   training:',
  '      4 years',
  '',
  'programs:',
  '  a.b:',
  '    work:',
  '    -   { lift: back squat, to: 90 deg,',
  '          load: 78 %, sets: 4 }',
  '    - sets: 04',
  '      load: "5"',
  '    - - nested',
  `      - ${'long '.repeat(60)}end`,
  'note 2: |  # block',
  '   first line',
  '',
  '     second line',
  '',
  'note 3: >-',
  '  folded text',
  '  of two lines',
  'trials: { 40 deg: [112,118 ,  115], 50: 1.50 }',
  'plain text: goes on',
  '  in a second line   # end',
  'cell: = a * b',
  'last: "tab\\there"   ',
];

const layouts = {
  'as it is': nasty.join('\n'),
  'with a final line break': `${nasty.join('\n')}\n`,
  'with line ends of two signs': `${nasty.join('\r\n')}\r\n`,
  'with line ends of two signs, the last one missing': nasty.join('\r\n'),
};

const files: readonly (readonly [string, string])[] = [
  ...Object.entries(layouts),
  ...readdirSync('scenarios')
    .filter((name) => name.endsWith('.yaml'))
    .map((name) => [name, readFileSync(`scenarios/${name}`, 'utf8')] as const),
  ['the starting scenario', startingScenario],
];

describe.each(files)('every value of %s', (_, text) => {
  const source = sourceOf(text);
  const all = scalars(source.value);

  it('put there again leaves the file as it is', () => {
    expect(all.length).toBeGreaterThan(15);
    for (const [path, value] of all)
      expect(written(source, dottedOf(path), String(value)), dottedOf(path)).toBe(text);
  });

  it('is replaced alone: before and after it every sign stays, and the data say so', () => {
    const others = ['7 kg', '= 2 * best("x", [1, 2]) # {odd}: \'q\'', '8.25'];
    // Reading takes its time: values take turns in long files.
    for (const [i, [path, value]] of all.entries())
      for (const other of all.length > 40 ? [others[i % 3] ?? ''] : others) {
        const place = dottedOf(path);
        const next = written(source, place, other);
        const found = sourceOf(next);
        expect(differences(source, found).map((one) => one.place)).toEqual([place]);
        const [start, end] = sameEnds(text, next);
        const gone = text.slice(start, text.length - end);
        // Nothing but what the value itself is written with is gone.
        expect(String(value).replace(/\s/g, '') + quotes, place).toSatisfy((signs: string) =>
          [...gone.replace(/\s/g, '')].every((sign) => signs.includes(sign)),
        );
        // All line ends of the file stay of one kind.
        expect(next.replace(/\r\n/g, '').includes('\n') && text.includes('\r\n')).toBe(false);
      }
  });
});

/** Signs with which a text is written around its own. */
const quotes = '"\'\\|>-#block0';

/** How many signs two texts have alike at their beginnings, then at their ends. */
function sameEnds(a: string, b: string): [number, number] {
  const most = Math.min(a.length, b.length);
  let start = 0;
  while (start < most && a[start] === b[start]) start++;
  let end = 0;
  while (end < most - start && a[a.length - 1 - end] === b[b.length - 1 - end]) end++;
  return [start, end];
}

describe('a value written into a file', () => {
  it.each([
    ['mass: 63.5 kg # hers\n', 'mass', '66 kg', 'mass: 66 kg # hers\n'],
    ['mass: "63.5 kg"   \r\n', 'mass', '66 kg', 'mass: "66 kg"   \r\n'],
    ["note: 'it''s' # x", 'note', "that's", "note: 'that''s' # x"],
    ['a: { to: 90 deg,from: 1 }', 'a.to', 'box 42 cm', 'a: { to: box 42 cm,from: 1 }'],
    ['a: { to: 90 deg }', 'a.to', 'p, q', 'a: { to: "p, q" }'],
    ['c: = a', 'c', '= best("back squat") / 2', 'c: = best("back squat") / 2'],
    ['c: { is: = a }', 'c.is', '= f("x", 1)', 'c: { is: \'= f("x", 1)\' }'],
    ['c: x', 'c', 'a # b', 'c: "a # b"'],
    ['c: x', 'c', 'a: b', 'c: "a: b"'],
    ['c: x', 'c', '*x', 'c: "*x"'],
    ['c: x', 'c', 'null', 'c: "null"'],
    ['c: x', 'c', '', 'c: ""'],
    ['c: x', 'c', 'one\ntwo', 'c: "one\\ntwo"'],
    ['n: 4', 'n', '5', 'n: 5'],
    ['n: "4"', 'n', '5', 'n: "5"'],
    ['n:\n  4 years\n  long # c\n', 'n', '5 years', 'n:\n  5 years # c\n'],
    ['t: |  # keep\n  a\n  b\n\nz: 1', 't', 'c', 't: |  # keep\n  c\n\nz: 1'],
    ['t: |\r\n   a\r\nz: 1', 't', 'c\n d', 't: |\r\n   c\r\n    d\r\nz: 1'],
    ['t: >-\n  a\n  b\nz: 1', 't', 'c', 't: >-\n  c\nz: 1'],
    ['l:\n- 1 # one\n- 2\n', 'l.2', '3', 'l:\n- 1 # one\n- 3\n'],
  ])('%j: %s = %j', (text, place, value, expected) => {
    expect(written(text, place, value)).toBe(expected);
  });

  it('says what is wrong with a place', () => {
    expect([fault('a: { mass: 1 }', 'a.mas', '2'), fault('a: { mass: 1 }', 'a', '2')]).toEqual([
      'there is no "mas" in a; did you mean "mass"?',
      'a is a group, not a single value; name one in it',
    ]);
    expect(fault('a:\nb: 1', 'a', '2')).toBe('a is empty; write its value in the file first');
  });

  it('changes one value whatever the layout and the text', () => {
    const name = fc.stringMatching(/^[a-z][a-z ]{0,6}[a-z]$/);
    const blanks = fc.stringMatching(/^ {0,3}$/);
    const texts = fc.string({ unit: 'grapheme', maxLength: 20 });
    const style = fc.constantFrom('plain', 'single', 'double');
    const line = fc.record({ name, blanks, text: texts, style });
    const ends = fc.constantFrom('\n', '\r\n');
    fc.assert(
      fc.property(
        fc.uniqueArray(line, { minLength: 2, maxLength: 5, selector: (one) => one.name }),
        ends,
        texts,
        fc.nat(4),
        (lines, newline, value, which) => {
          const quoted = lines.map(({ text, style: way }) =>
            way === 'plain'
              ? 'plain text'
              : way === 'single'
                ? `'${text.replace(/[\s\p{C}]/gu, ' ').replaceAll("'", "''")}'`
                : JSON.stringify(text),
          );
          const rows = lines.map(
            (one, i) => `${one.name}:${one.blanks} ${quoted[i]}${one.blanks} # ${one.name}`,
          );
          const { source } = readSource('f.yaml', rows.join(newline));
          const at = which % lines.length;
          const place = lines[at]?.name ?? '';
          fc.pre(source !== undefined);
          const { written: made, fault: says } = writeValue(source, place, value);
          expect(says).toBeUndefined();
          const next = (made?.text ?? '').split(newline);
          // Every other line is the same, and this one around its value too.
          expect(next.filter((_, i) => i !== at)).toEqual(rows.filter((_, i) => i !== at));
          const row = lines[at];
          expect(next[at]?.startsWith(`${place}:${row?.blanks} `)).toBe(true);
          expect(next[at]?.endsWith(`${row?.blanks} # ${place}`)).toBe(true);
          const said = Object(sourceOf(made?.text ?? '').value)[place];
          expect(String(said)).toBe(typeof said === 'string' ? value : String(Number(value)));
        },
      ),
      { numRuns: 300 },
    );
  });
});

const derived = (own: string, newline = '\n') =>
  `programs:
  deep squat: # the model
    weeks: 8
    work:
      - { lift: back squat, to: 115 deg, sets: 4 }
      - { lift: front squat, to: 90 deg, sets: 2 }
${own}# end`.replaceAll('\n', newline);

describe('a value of a program that is like another', () => {
  const place = 'programs.half squat.work.1.to';

  it.each([
    ['in its change', '  half squat: { like: deep squat, change: { work.1.to: 80 deg } }\n'],
    [
      'in a group of its change',
      '  half squat: { like: deep squat, change: { work.1: { lift: back squat, to: 80 deg } } }\n',
    ],
  ])('is replaced %s', (_, own) => {
    expect(written(derived(own), place, '75 deg')).toBe(derived(own.replace('80 deg', '75 deg')));
  });

  it.each([
    [
      '  half squat: { like: deep squat, change: { weeks: 6, deload: } } # c\n',
      '  half squat: { like: deep squat, change: { work.1.to: 75 deg, weeks: 6, deload: } } # c\n',
    ],
    [
      '  half squat: { like: deep squat } # c\n',
      '  half squat: { like: deep squat, change: { work.1.to: 75 deg } } # c\n',
    ],
    [
      '  half squat: { like: deep squat, change: {} }\n',
      '  half squat: { like: deep squat, change: { work.1.to: 75 deg } }\n',
    ],
    [
      '  half squat:\n    like: deep squat # model\n    change: # all\n      # why\n      weeks: 6\n',
      '  half squat:\n    like: deep squat # model\n    change: # all\n      # why\n      work.1.to: 75 deg\n      weeks: 6\n',
    ],
    [
      '  half squat:\n    like: deep squat # model\n    weeks: 6\n',
      '  half squat:\n    like: deep squat # model\n    change: { work.1.to: 75 deg }\n    weeks: 6\n',
    ],
  ])('is added to its change: %j', (own, expected) => {
    expect(written(derived(own), place, '75 deg')).toBe(derived(expected));
    expect(written(derived(own, '\r\n'), place, '75 deg')).toBe(derived(expected, '\r\n'));
  });

  it('is left to the coach where its change has moved the places', () => {
    const own = '  half squat: { like: deep squat, change: { work.1: } }\n';
    expect(fault(derived(own), place, '75 deg')).toBe(
      'programs.half squat.work.1.to comes from the program that "half squat" is like; write it under change: of "half squat" by hand',
    );
  });

  it('names the programs that follow a change of the one they are like', () => {
    const text = derived(
      '  half squat: { like: deep squat, change: { work.1.to: 80 deg } }\n  more: { like: deep squat, weeks: 9 }\n  own: { weeks: 1 }\n',
    );
    const alike = (at: string, value: string) =>
      writeValue(sourceOf(text), at, value).written?.alike;
    expect(alike('programs.deep squat.work.1.to', '90 deg')).toEqual(['more']);
    expect(alike('programs.deep squat.work.1.sets', '9')).toEqual(['half squat', 'more']);
    expect(alike('programs.own.weeks', '2')).toEqual([]);
  });

  it('reads in full as asked, all else as before', () => {
    const text = derived('  half squat:\n    like: deep squat\n');
    const next = sourceOf(written(text, place, '75 deg'));
    expect(
      isDeepStrictEqual(Object(next.value).programs['half squat'], {
        like: 'deep squat',
        change: { 'work.1.to': '75 deg' },
      }),
    ).toBe(true);
  });
});

describe('a value in a file that the scenario includes', () => {
  const main = 'include: parts/her.yaml\nangles: flexion\nprograms:\n  x: { weeks: 1 }\n';
  const her =
    '# hers\r\nathlete:\r\n  mass: 63.5 kg # on Monday\r\nprograms:\r\n  y: { like: x }\r\n';
  const beside = (name: string) =>
    name === 'parts/her.yaml' ? { text: `angles: flexion\r\n${her}` } : { fault: 'none' };
  const { source } = readWithIncludes('notes/f.yaml', main, beside);

  it.each([
    ['athlete.mass', '66 kg', her.replace('63.5 kg', '66 kg'), 4],
    ['programs.y.weeks', '2', her.replace('like: x', 'like: x, change: { weeks: 2 }'), 6],
  ])('is written there: %s', (place, value, expected, line) => {
    if (!source) throw new Error('cannot be read');
    const { written: made } = writeValue(source, place, value);
    expect(made).toMatchObject({
      file: 'notes/parts/her.yaml',
      text: `angles: flexion\r\n${expected}`,
      line,
    });
    expect(made?.source.text).toBe(main);
  });
});
