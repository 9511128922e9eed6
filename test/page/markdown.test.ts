import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { escapeInline, escapeLine } from '../../src/page/escape.ts';
import { renderMarkdown } from '../../src/page/markdown.ts';
import { smallReport } from './smallReport.ts';

// Golden output: drawn by this program, read line by line and found right by hand.
const expected = [
  '# SN-04: stronger in the deep knee range',
  '',
  '## Verdict',
  '',
  'The deep squat reaches the goal: +11 % at 75–100° (8 to 14 %), within 8 weeks.',
  '',
  'Long holds come second; \\*both\\* are better than the box squat.',
  '',
  '| Program    | Gain at 75–100° | Minutes \\| week |',
  '| ---------- | --------------: | --------------: |',
  '| deep squat |           +11 % |              64 |',
  '| long holds |            +9 % |             105 |',
  '',
  '## Gain by angle',
  '',
  'Both gains are greatest in the target range.',
  '',
  '```text',
  'gain (%)',
  ' 12 ┤·         ·          ·         ·       : ·         :          ·         ·',
  '    │                                       :    ooooo  :',
  ' 10 ┤·         ·          ·         ·       ooooo     oooooo       ·         ·',
  '    │                                  ooooo*****       :   ooooo',
  '  8 ┤·         ·          ·       ooooo*****: ·  *****  :        ooooo       ·',
  '    │                        ooooo*****     :         ******          ooooo',
  '  6 ┤·         ·       oooooo*****  ·       : ·         :   *****  ·       ooo',
  '    │             ooooo******               :           :        *****',
  '  4 ┤·       ooooo*****   ·         ·       : ·         :          ·  *****  ·',
  '    │   ooooo*****                          :           :                  ***',
  '  2 ┤ooo*****  ·          ·         ·       : ·         :          ·         ·',
  '    │***                                    :           :',
  '  0 ┤·         ·          ·         ·       : ·         :          ·         ·',
  '    └┼────┴────┼────┴─────┼────┴────┼────┴────┼────┴────┼─────┴────┼────┴────┼',
  'deg  0         20         40        60        80       100        120      140',
  '                                            [===========] target 75-100 deg',
  'o deep squat   * long holds',
  '```',
  '',
  '## Cautions',
  '',
  '- Not medical advice.',
  '- Return to sport is a licensed clinician’s decision; local rules come first.',
  '',
].join('\n');

describe('renderMarkdown', () => {
  it('writes the whole report', () => {
    expect(renderMarkdown(smallReport)).toBe(expected);
  });

  it('has no trailing space, one final newline, whatever it is given', () => {
    const text = fc.string({ unit: 'grapheme', maxLength: 80 });
    fc.assert(
      fc.property(text, text, fc.array(text), (heading, paragraph, items) => {
        const markdown = renderMarkdown({
          title: 'Title',
          sections: [
            {
              heading,
              blocks: [
                { kind: 'text', text: paragraph },
                { kind: 'list', items },
              ],
            },
          ],
        });
        expect(markdown).toMatch(/[^\n]\n$/u);
        expect(markdown).not.toMatch(/[ \t]\n/u);
      }),
    );
  });
});

describe('escaping', () => {
  // By the GFM specification: 2.4 backslash escapes, 4.2 headings, 5.2 list items, 6 inlines.
  it.each([
    ['deep_squat_2', 'deep_squat_2'],
    ['_deep_ squat', '\\_deep\\_ squat'],
    ['2 * 3 < 7', '2 * 3 < 7'],
    ['2*3*4', '2\\*3\\*4'],
    ['`2*3` and *', '`2*3` and *'],
    ['a ` b', 'a \\` b'],
    ['\\`<b>`', '\\\\`<b>`'],
    ['<script>', '\\<script>'],
    ['[a](b) ![c](d)', '[a\\](b) ![c\\](d)'],
    ['[75, 100]', '[75, 100]'],
    ['~5 kg, ~~6~~', '~5 kg, \\~\\~6\\~\\~'],
    ['R&D &amp; more', 'R&D \\&amp; more'],
    ['- 3 of 8', '- 3 of 8'],
  ])('%s inline', (text, escaped) => {
    expect(escapeInline(text)).toBe(escaped);
  });

  it.each([
    ['# squat', '\\# squat'],
    ['#4 squat', '#4 squat'],
    ['- 3 of 8', '\\- 3 of 8'],
    ['-3 %', '-3 %'],
    ['1. squat', '1\\. squat'],
    ['1.5 kg', '1.5 kg'],
    ['> 10 %', '\\> 10 %'],
    ['---', '\\---'],
  ])('%s at the start of a line', (text, escaped) => {
    expect(escapeLine(text)).toBe(escaped);
  });
});
