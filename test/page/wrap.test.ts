import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { displayWidth, oneLine, paragraphs, wrapWords } from '../../src/page/wrap.ts';

describe('displayWidth', () => {
  // Counted by hand: what a terminal with East Asian wide signs and emoji of two columns shows.
  it.each([
    ['deep squat', 10],
    ['N·m 75–100°', 11],
    ['Kniebeuge für Åsa', 17],
    ['e\u0301', 1],
    ['深蹲', 4],
    ['스쿼트', 6],
    ['🏋️‍♀️', 2],
    ['🇳🇴', 2],
    ['', 0],
  ])('%s takes %i columns', (line, columns) => {
    expect(displayWidth(line)).toBe(columns);
  });
});

describe('oneLine and paragraphs', () => {
  it('drops what would colour or reorder a terminal', () => {
    expect(oneLine(' a\u001b[31m b\t\n c\u202E ')).toBe('a [31m b c');
  });

  it('splits at empty lines only', () => {
    expect(paragraphs('one\ntwo\n\n \nthree\n')).toEqual(['one two', 'three']);
  });
});

describe('wrapWords', () => {
  it('hangs the lines after the first', () => {
    expect(wrapWords('hold at the deepest angle', 14, '- ', '  ')).toEqual([
      '- hold at the',
      '  deepest',
      '  angle',
    ]);
  });

  it('keeps a number with its unit', () => {
    expect(wrapWords('a gain of 12 % is', 12)).toEqual(['a gain of', '12 % is']);
    expect(wrapWords('a load of 85 kilos', 12)).toEqual(['a load of 85', 'kilos']);
  });

  it('cuts a word that is longer than a line', () => {
    expect(wrapWords('dorsiflexion', 5)).toEqual(['dorsi', 'flexi', 'on']);
  });

  it('never exceeds the width and loses no letter', () => {
    fc.assert(
      fc.property(
        fc.string({ unit: 'grapheme', maxLength: 200 }),
        fc.integer({ min: 10, max: 60 }),
        (text, width) => {
          const lines = wrapWords(text, width, '- ', '  ');
          for (const line of lines) expect(displayWidth(line)).toBeLessThanOrEqual(width);
          const bare = (whole: string) => whole.replace(/\s/gu, '');
          expect(bare(lines.map((line) => line.slice(2)).join(''))).toBe(bare(oneLine(text)));
        },
      ),
    );
  });
});
