import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { renderTerminal } from '../../src/page/terminal.ts';
import { displayWidth } from '../../src/page/wrap.ts';
import { smallReport } from './smallReport.ts';

// Golden output: drawn by this program, read line by line and found right by hand.
const at80 = [
  'SN-04: stronger in the deep knee range',
  '======================================',
  '',
  'Verdict',
  '-------',
  '',
  'The deep squat reaches the goal: +11 % at 75–100° (8 to 14 %), within 8 weeks.',
  '',
  'Long holds come second; *both* are better than the box squat.',
  '',
  'Program     Gain at 75–100°  Minutes | week',
  '----------  ---------------  --------------',
  'deep squat            +11 %              64',
  'long holds             +9 %             105',
  '',
  'Gain by angle',
  '-------------',
  '',
  'Both gains are greatest in the target range.',
  '',
  'gain (%)',
  ' 12 ┤·          ·         ·          ·       : ·          :         ·          ·',
  '    │                                        :    oooooo  :',
  ' 10 ┤·          ·         ·          ·       ooooo      ooooo       ·          ·',
  '    │                                   ooooo*****        :  ooooo',
  '  8 ┤·          ·         ·        ooooo*****: ·  ******  :       oooooo       ·',
  '    │                        oooooo*****     :          *****           ooooo',
  '  6 ┤·          ·       ooooo******  ·       : ·          :  *****  ·        ooo',
  '    │              ooooo*****                :            :       ******',
  '  4 ┤·       oooooo*****  ·          ·       : ·          :         ·   *****  ·',
  '    │   ooooo******                          :            :                  ***',
  '  2 ┤ooo*****   ·         ·          ·       : ·          :         ·          ·',
  '    │***                                     :            :',
  '  0 ┤·          ·         ·          ·       : ·          :         ·          ·',
  '    └┼────┴─────┼────┴────┼────┴─────┼────┴────┼─────┴────┼────┴────┼─────┴────┼',
  'deg  0          20        40         60        80        100       120       140',
  '                                             [============] target 75-100 deg',
  'o deep squat   * long holds',
  '',
  'Cautions',
  '--------',
  '',
  '- Not medical advice.',
  '- Return to sport is a licensed clinician’s decision; local rules come first.',
  '',
].join('\n');

const at40 = [
  'SN-04: stronger in the deep knee range',
  '======================================',
  '',
  'Verdict',
  '-------',
  '',
  'The deep squat reaches the goal: +11 %',
  'at 75–100° (8 to 14 %), within 8 weeks.',
  '',
  'Long holds come second; *both* are',
  'better than the box squat.',
  '',
  'deep squat',
  '  Gain at 75–100°: +11 %,',
  '  Minutes | week: 64',
  'long holds',
  '  Gain at 75–100°: +9 %,',
  '  Minutes | week: 105',
  '',
  'Gain by angle',
  '-------------',
  '',
  'Both gains are greatest in the target',
  'range.',
  '',
  'gain (%)',
  ' 12 ┤·      ·       ·  :   · :    ·',
  '    │                  :  ooo:',
  ' 10 ┤·      ·       ·  :oo · oo   ·',
  '    │                ooo**   : oo',
  '  8 ┤·      ·      oo***  ***:   ooo',
  '    │           ooo**  :     **     oo',
  '  6 ┤·      · oo*** ·  :   · : ** ·   oo',
  '    │       oo**       :     :   ***',
  '  4 ┤·   ooo**      ·  :   · :    · **',
  '    │  oo***           :     :        **',
  '  2 ┤oo**   ·       ·  :   · :    ·',
  '    │**                :     :',
  '  0 ┤·      ·       ·  :   · :    ·',
  '    └┼──────┼───────┼──────┼──────┼─────',
  'deg  0      30      60     90    120',
  '     target 75-100 deg [=====]',
  'o deep squat   * long holds',
  '',
  'Cautions',
  '--------',
  '',
  '- Not medical advice.',
  '- Return to sport is a licensed',
  '  clinician’s decision; local rules come',
  '  first.',
  '',
].join('\n');

describe('renderTerminal', () => {
  it('writes the whole report at 80 columns', () => {
    expect(renderTerminal(smallReport, 80)).toBe(at80);
  });

  it('writes the whole report at 40 columns', () => {
    expect(renderTerminal(smallReport, 40)).toBe(at40);
  });

  it('never exceeds the width', () => {
    fc.assert(
      fc.property(fc.integer({ min: 38, max: 200 }), (width) => {
        for (const line of renderTerminal(smallReport, width).split('\n'))
          expect(displayWidth(line)).toBeLessThanOrEqual(width);
      }),
    );
  });
});
