import { evaluate } from 'mathjs/number';
import { describe, expect, it } from 'vitest';
import { seeded } from '../../numeric/libraries.ts';
import { given } from './formulas.ts';

/** Random arithmetic of bounded depth, as text that both sides read. */
function randomExpression(random: () => number, depth: number): string {
  const part = () => randomExpression(random, depth - 1);
  const number = () => (random() * 20 - 5).toFixed(2).replace('-', '0-');
  if (depth === 0) return `(${number()})`;
  const forms: readonly (() => string)[] = [
    () => `(${part()} + ${part()})`,
    () => `(${part()} - ${part()})`,
    () => `${part()} * ${part()}`,
    () => `(${part()} / ${part()})`,
    () => `-(${part()})`,
    () => `abs(${part()}) ^ 0.5`,
    () => `(${part()} > ${part()} ? ${part()} : ${part()})`,
    () => `max(${part()}, ${part()})`,
    () => `exp(-abs(${part()}))`,
    () => `(${part()}) ^ 2`,
  ];
  return forms[Math.floor(random() * forms.length)]?.() ?? number();
}

describe('arithmetic of formulas', () => {
  it('gives what mathjs gives on 1,000 random expressions (relative 1e-12)', () => {
    const random = seeded(20261125);
    for (let i = 0; i < 1000; i++) {
      const text = randomExpression(random, 1 + Math.floor(random() * 4));
      const [own, theirs] = [given(text), Number(evaluate(text))];
      if (!Number.isFinite(theirs)) expect(own, text).toBe(theirs);
      else
        expect(Math.abs(Number(own) - theirs), text).toBeLessThanOrEqual(
          1e-12 * Math.max(1, Math.abs(theirs)),
        );
    }
  });

  it.each([
    // W(1 + r/30) with 100 kg for 5 and 10 (Epley 1985); 36W/(37 − r) (Brzycki 1993); equal at 10.
    ['100 kg * (1 + 5/30)', 116.667],
    ['100 kg * (1 + 10/30)', 133.333],
    ['100 kg * 36 / (37 - 5)', 112.5],
    ['100 kg * 36 / (37 - 10)', 133.333],
    // Wathan, Mayhew and Lombardi's forms at 5 repetitions (hand calculation).
    ['100 * 100 kg / (48.8 + 53.8 * exp(-0.075 * 5))', 116.583],
    ['100 * 100 kg / (52.2 + 41.9 * exp(-0.055 * 5))', 119.011],
    ['100 kg * 5 ^ 0.1', 117.462],
    // 10 mm chain (DIN 766, 2.20 kg/m), 1.50 m lifted each side.
    ['2 * 2.2 kg/m * 1.5 m', 6.6],
    // Units by definition: 1 lb, and 1 lbf ft.
    ['1 lb', 0.45359237],
    ['1 lbf ft', 1.3558179483314],
    ['90 deg', Math.PI / 2],
  ])('%s', (text, expected) => {
    expect(given(text)).toBeCloseTo(expected, 3);
  });
});
