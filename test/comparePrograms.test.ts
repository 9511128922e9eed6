import { describe, expect, it } from 'vitest';
import { startingScenario } from '../src/notebook/startingScenario.ts';
import { differences } from '../src/notebook/text/differences.ts';
import { readSource } from '../src/notebook/text/source.ts';
import { programsPage } from '../src/page/programsPage.ts';
import { renderTerminal } from '../src/page/terminal.ts';
import { displayWidth } from '../src/page/wrap.ts';
import { comparePrograms } from '../src/questions/comparePrograms.ts';
import { run } from '../src/run.ts';

function source(text: string) {
  const found = readSource('f.yaml', text).source;
  if (!found) throw new Error('cannot be read');
  return found;
}

async function compared(a: string, b: string, text = startingScenario) {
  const found = await comparePrograms(source(text), a, b);
  if (!found.compared) throw new Error(found.fault ?? JSON.stringify(found.problems));
  return found.compared;
}

const pageText = async (a: string, b: string, text?: string) =>
  renderTerminal(programsPage(await compared(a, b, text)), 80).replace(/\s+/g, ' ');

const gainsOf = async (text: string) => {
  const { results } = await run('f.yaml', text);
  return new Map(
    results?.ranking.map(({ program }) => [program.name, program.landing.meanGain]) ?? [],
  );
};

describe('two programs of one scenario', () => {
  it('differ where they do once both are put in full', async () => {
    const { differences: found } = await compared('deep squat', 'squat to thigh level');
    expect(found.map(({ place, a, b }) => [place, a?.text, b?.text])).toEqual([
      ['work.1.to', '115 deg', 'thigh level'],
    ]);
  });

  it('differ in a whole entry where one lifts and the other holds', async () => {
    const { differences: found } = await compared('deep squat', 'long holds');
    expect(found.map(({ place }) => place)).toEqual([
      'sessions per week',
      'work.1',
      'progress',
      'deload',
    ]);
  });

  it('have the gains that the report gives them', async () => {
    const gains = await gainsOf(startingScenario);
    const { a, b } = await compared('long holds', 'deep squat');
    expect([a.landing.meanGain, b.landing.meanGain]).toEqual([
      gains.get('long holds'),
      gains.get('deep squat'),
    ]);
  });

  it('tell what each place alone does, as the file with it gives', async () => {
    const { trials, a } = await compared('deep squat', 'long holds');
    const often = startingScenario.replace('sessions per week: 2', 'sessions per week: 3');
    expect(trials[0]?.gain).toBe((await gainsOf(often)).get('deep squat'));
    expect(trials).toHaveLength(4);
    // More sessions of the same work add to the gain.
    expect(trials[0]?.gain).toBeGreaterThan(a.landing.meanGain);
  });

  it('make the whole difference where they differ in one place', async () => {
    const { trials, b } = await compared('deep squat', 'squat to thigh level');
    expect(trials.map(({ gain }) => gain)).toEqual([b.landing.meanGain]);
    expect(await pageText('deep squat', 'squat to thigh level')).toMatch(
      /The first that moves it is work\.1\.to \([+-]\d\.\d\), and it is the only one\./,
    );
  });

  it('are told apart by the rule of the ranking, between these two alone', async () => {
    // Far behind the best of the file, but next to each other.
    const near = await compared('deep squat', 'squat to thigh level');
    expect(near.isTie).toBe(true);
    const far = await compared('deep squat', 'long holds');
    expect(far.isTie).toBe(false);
    expect(await pageText('deep squat', 'long holds')).toContain('They can be told apart');
    expect(await pageText('deep squat', 'squat to thigh level')).toContain(
      'They cannot be told apart',
    );
  });

  it('that say the same differ in nothing', async () => {
    const twin = startingScenario.replace('    change: { work.1.to: thigh level }\n', '');
    const text = await pageText('deep squat', 'squat to thigh level', twin);
    expect(text).toContain('In nothing but the name. The target gains are equal');
  });

  it('are named, or the nearest name is', async () => {
    const fault = async (a: string, b: string) =>
      (await comparePrograms(source(startingScenario), a, b)).fault;
    expect(await fault('deep sqat', 'long holds')).toBe(
      'there is no program "deep sqat"; did you mean "deep squat"?',
    );
    expect(await fault('long holds', 'long holds')).toBe(
      'both are "long holds"; name two programs',
    );
  });

  it('give the problems of the file', async () => {
    const bad = source(startingScenario.replace('170 cm', '170 kg'));
    const { problems } = await comparePrograms(bad, 'deep squat', 'long holds');
    expect(problems?.map(({ at }) => at?.line)).toEqual([8]);
  });

  it('are shown whole within 40 and 80 columns', async () => {
    const page = programsPage(await compared('deep squat', 'long holds'));
    for (const width of [40, 80]) {
      const lines = renderTerminal(page, width).split('\n');
      expect(Math.max(...lines.map(displayWidth))).toBeLessThanOrEqual(width);
      const text = lines.join(' ').replace(/\s+/g, ' ');
      for (const part of [
        'a is "deep squat"; b is "long holds".',
        'minutes a week',
        'b, 3 times a week: Hold knee extension at 90°',
        'o deep squat',
        'back squat 0–115°',
      ])
        expect(text).toContain(part);
    }
  });
});

describe('entries of two lists', () => {
  it('differ whole where they are of another kind, and by value where they are of one', () => {
    const [a, b] = [
      '- { lift: x, to: 1 }\n- { hold: y, at: 2 }',
      '- { lift: x, to: 2 }\n- { lift: y, to: 2 }',
    ];
    expect(differences(source(a ?? ''), source(b ?? '')).map(({ place }) => place)).toEqual([
      '1.to',
      '2',
    ]);
  });
});
