import { describe, expect, it } from 'vitest';
import { startingScenario } from '../src/notebook/startingScenario.ts';
import { changePage } from '../src/page/changePage.ts';
import { renderTerminal } from '../src/page/terminal.ts';
import { displayWidth } from '../src/page/wrap.ts';
import { Session } from '../src/questions/session.ts';
import { run } from '../src/run.ts';

/** A watched file, text by text. */
function watching() {
  const session = new Session('f.yaml');
  return async (text: string, width = 80) => {
    const turn = await session.next(text);
    if (turn.kind !== 'change') return { turn, said: turn.kind };
    const page = renderTerminal(changePage(turn.change), width);
    return { turn, page, said: page.replace(/\s+/g, ' ').trim() };
  };
}

const weaker = startingScenario.replace('effort: 90 %', 'effort: 60 %');

describe('a watched file', () => {
  it('says at each save which places changed and what moved, no more', async () => {
    const next = watching();
    expect((await next(startingScenario)).said).toBe('first');
    expect((await next(weaker)).said).toMatch(
      /^- programs\.long holds\.work\.1\.effort: 90 % → 60 % \(line \d+\) "long holds" is still the best program; its target gain goes from \+\d+ % to \+\d+ % \(-\d+\.\d points\)\.$/,
    );
    expect((await next(`${weaker}# a note\n`)).said).toBe('No value changed.');
    expect((await next(weaker.replace('AB-01', 'AB-02'))).said).toBe(
      '- athlete.code: AB-01 → AB-02 (line 6) Nothing that counts changed.',
    );
  });

  it('gives the answers that each text gives by itself', async () => {
    const next = watching();
    const texts = [startingScenario, weaker, startingScenario.replace('65 kg', '72 kg')];
    for (const text of texts) {
      const { turn } = await next(text);
      const { results } = await run('f.yaml', text);
      if (turn.kind === 'problems') throw new Error('has problems');
      const gains =
        turn.kind === 'first'
          ? turn.results.ranking.map(({ program }) => program.landing.meanGain)
          : turn.change.programs.map(({ b }) => b);
      expect(gains).toEqual(results?.ranking.map(({ program }) => program.landing.meanGain));
    }
  });

  it('keeps the last good answers over a text with problems, or cut off while it is written', async () => {
    const next = watching();
    await next(startingScenario);
    for (const bad of [weaker.replace('170 cm', '170 kg'), weaker.slice(0, 400), '', '[{"']) {
      const { turn } = await next(bad);
      expect(turn).toMatchObject({ kind: 'problems', isKnown: true });
    }
    const { turn, said } = await next(weaker);
    expect(turn).toMatchObject({ isMended: true });
    expect(said).toContain('90 % → 60 %');
    expect((await next(startingScenario)).turn).toMatchObject({ isMended: false });
  });

  it('waits for a first good text', async () => {
    const next = watching();
    expect((await next('title: x')).turn).toMatchObject({ kind: 'problems', isKnown: false });
    expect((await next(startingScenario)).said).toBe('first');
  });

  it('repeats no remark that was there before', async () => {
    const odd = startingScenario.replace(
      '= best("back squat", 110 deg) / mass',
      '{ is: mass, expect: at most 60 kg }',
    );
    const next = watching();
    expect((await next(odd)).turn).toMatchObject({ remarks: [{ code: 'broken-expectation' }] });
    expect((await next(`${odd}# note`)).turn).toMatchObject({ remarks: [] });
    expect((await next(odd.replace('65 kg', '72 kg'))).turn).toMatchObject({
      remarks: [{ code: 'broken-expectation' }],
    });
  });

  it('tells new and lost programs and cells, a new order, and what is told apart', async () => {
    const next = watching();
    await next(startingScenario);
    const { said } = await next(
      startingScenario
        .replace('  long holds:', '  more holds:')
        .replace('  bar to body: = best("back squat", 110 deg) / mass', '  twice: = 2 * mass'),
    );
    // Twice 65 kg.
    expect(said).toMatch(
      /The best program was "long holds" \(\+(\d+) %\); now it is "more holds" \(\+\1 %\)\. - more holds: new, \+\1 %, place 1 - long holds: taken out - cell twice: new, 130 kg - cell bar to body: taken out$/,
    );
  });

  it('fits in 40 columns', async () => {
    const next = watching();
    await next(startingScenario, 40);
    const { page = '' } = await next(weaker.replace('65 kg', '72 kg'), 40);
    expect(Math.max(...page.split('\n').map(displayWidth))).toBeLessThanOrEqual(40);
  });
});
