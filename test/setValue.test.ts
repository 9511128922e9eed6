import { describe, expect, it } from 'vitest';
import { startingScenario } from '../src/notebook/startingScenario.ts';
import { readSource } from '../src/notebook/text/source.ts';
import { setPage } from '../src/page/setPage.ts';
import { renderTerminal } from '../src/page/terminal.ts';
import { displayWidth } from '../src/page/wrap.ts';
import { setValue } from '../src/questions/setValue.ts';
import { run } from '../src/run.ts';

async function set(place: string, value: string, text = startingScenario) {
  const { source } = readSource('f.yaml', text);
  if (!source) throw new Error('cannot be read');
  return setValue(source, place, value);
}

async function page(place: string, value: string, width = 80) {
  const { written, change } = { change: undefined, ...(await set(place, value)) };
  if (!written) throw new Error('not written');
  return renderTerminal(setPage(written, 'f.yaml', change), width);
}

const flat = (text: string) => text.replace(/\s+/g, ' ').trim();

describe('a value set in a scenario', () => {
  it('gives the answers that the file with it gives by itself', async () => {
    const made = await set('programs.long holds.work.1.effort', '60 %');
    const { results } = await run(
      'f.yaml',
      startingScenario.replace('effort: 90 %', 'effort: 60 %'),
    );
    const { change } = { change: undefined, ...made };
    expect(change?.programs.map(({ name, b }) => [name, b])).toEqual(
      results?.ranking.map(({ program }) => [program.name, program.landing.meanGain]),
    );
  });

  it('is refused where it makes the file wrong, with the problem at its place', async () => {
    const made = await set('athlete.mass', '6600 kg');
    // The mass stands on line 9 of the starting scenario, from column 9.
    expect(made.problems?.map(({ at, message }) => [at?.line, at?.col, message])).toEqual([
      [9, 9, 'mass is 6600 kg; a person weighs between 20 kg and 250 kg'],
    ]);
  });

  it('may mend one of two problems', async () => {
    const bad = startingScenario.replace('65 kg', '6500 kg').replace('170 cm', '170 kg');
    const made = await set('athlete.mass', '65 kg', bad);
    expect(made.written?.text).toBe(startingScenario.replace('170 cm', '170 kg'));
    expect('remarks' in made && made.remarks.map(({ at }) => at?.line)).toEqual([8]);
  });

  it('says what changed and what that did to the answer', async () => {
    expect(flat(await page('athlete.mass', '72 kg'))).toMatch(
      /^athlete\.mass: 65 kg → 72 kg \(line 9\)\. "long holds" is still the best program; its target gain stays at .*bar to body: 1\.23 → 1\.11$/,
    );
    expect(flat(await page('athlete.code', 'AB-02'))).toBe(
      'athlete.code: AB-01 → AB-02 (line 6). Nothing that counts changed.',
    );
    expect(flat(await page('athlete.mass', '65 kg'))).toBe(
      'athlete.mass is 65 kg already (line 9).',
    );
    expect(flat(await page('programs.deep squat.weeks', '6'))).toContain(
      'It changes too what is like it: squat to thigh level.',
    );
    expect(flat(await page('programs.squat to thigh level.work.1.sets', '2'))).toMatch(
      /^programs\.squat to thigh level\.work\.1\.sets: 4 → 2 \(line \d+\)\. "long holds" is still the best program; its target gain stays at \+\d+ %\. .*- squat to thigh level: goes from \+\d % to \+\d % \(-\d\.\d points\)/,
    );
  });

  it('names another best program', async () => {
    expect(flat(await page('programs.long holds.work.1.effort', '5 %'))).toMatch(
      /The best program was "long holds" \(\+\d+ %\); now it is "[a-z ]*squat[a-z ]*" \(\+\d+ %\)\. .*long holds: goes from \+\d+ % to (\+\d|0) % \(-\d+\.\d points\), place 1 → 3/,
    );
  });

  it('fits in 40 columns', async () => {
    const lines = (await page('programs.long holds.work.1.effort', '5 %', 40)).split('\n');
    expect(Math.max(...lines.map(displayWidth))).toBeLessThanOrEqual(40);
  });
});
