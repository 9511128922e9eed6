import { describe, expect, it } from 'vitest';
import type { Lift } from '../../src/mechanics/lift.ts';
import { Stance } from '../../src/mechanics/posture.ts';
import { toRadians } from '../../src/numeric/degrees.ts';
import { drawFigures, usualColumns } from '../../src/page/stickFigure.ts';
import { bodyOf } from '../../src/physiology/body.ts';
import { lifts } from '../../src/tables/lifts.ts';
import { sensibleLoad } from '../mechanics/sensibleLoads.ts';

function startAndEnd(lift: Lift, stature = 1.8) {
  const body = bodyOf({ reference: 'male', stature, mass: 80, lengths: {}, limits: {} });
  const stance = new Stance(lift, body, sensibleLoad(lift, 80));
  return lift.rangeDeg.map((deg) => {
    const held = stance.posture(toRadians(deg));
    if ('impossible' in held) throw new Error(`${lift.name}: ${held.impossible}`);
    return held.placement;
  });
}

const byName = lifts.map((lift) => [lift.name, lift] as const);

describe('stick figures', () => {
  it.each(byName)(
    '%s: two figures, at most 38 columns of plain characters, each with its load and joints',
    (_, lift) => {
      for (const stature of [1.55, 2]) {
        const drawn = drawFigures(lift, startAndEnd(lift, stature));
        const lines = drawn.split('\n');
        for (const line of lines) expect(line.length).toBeLessThanOrEqual(usualColumns);
        expect(lines.length).toBeLessThanOrEqual(20);
        expect(drawn).toMatch(/^[ oO#:=_/\\|\n-]+$/);
        expect(drawn.split('#').length - 1).toBe(2);
      }
    },
  );

  it('keeps to a narrower width and draws as many figures as asked', () => {
    for (const lift of lifts)
      for (const columns of [24, 38, 60]) {
        const [start, end] = startAndEnd(lift);
        if (!start || !end) throw new Error('a lift has two ends');
        const three = drawFigures(lift, [start, end, start], columns);
        for (const line of three.split('\n')) expect(line.length).toBeLessThanOrEqual(columns);
        expect(three.split('#').length - 1).toBe(3);
      }
  });

  it('standing lifts have the head above the feet and stand on the ground', () => {
    for (const lift of lifts) {
      if (lift.support !== 'feet' && lift.support !== 'ball of foot') continue;
      const lines = drawFigures(lift, startAndEnd(lift)).split('\n');
      const ground = lines.findIndex((line) => line.includes('_'));
      expect(ground).toBeGreaterThanOrEqual(lines.length - 2);
      const head = lines.findIndex((line) => line.includes('O'));
      if (lift.chain.some(({ segment }) => segment.startsWith('trunk')))
        expect(head).toBe(lines.findIndex((line) => /[oO]/.test(line)));
      expect(head).toBeLessThan(ground);
    }
  });

  it('shows a few to look at', () => {
    const shown = ['back squat', 'deadlift', 'hip thrust', 'chin-up', 'bench press'];
    for (const lift of lifts)
      if (shown.includes(lift.name))
        console.log(`${lift.name}\n${drawFigures(lift, startAndEnd(lift))}`);
    expect(lifts.filter(({ name }) => shown.includes(name)).length).toBe(shown.length);
  });
});
