import { describe, expect, it } from 'vitest';
import { startingScenario } from '../src/notebook/startingScenario.ts';
import { readSource } from '../src/notebook/text/source.ts';
import { run, runSource } from '../src/run.ts';
import { Memory } from '../src/stages/memory.ts';

/** Two runs with one memory: of the starting scenario, and of it with something replaced. */
async function twice(from: string, to: string) {
  const memory = new Memory();
  const [before, after] = [startingScenario, startingScenario.replace(from, to)].map((text) =>
    readSource('f.yaml', text),
  );
  if (!before?.source || !after?.source) throw new Error('cannot be parsed');
  const [first, second] = [
    await runSource(before.source, memory),
    await runSource(after.source, memory),
  ];
  if (!first.results || !second.results) throw new Error('has problems');
  return { first: first.results, second: second.results, text: startingScenario.replace(from, to) };
}

describe('a run with the memory of another', () => {
  it('takes over what nothing changed for: the athlete, and programs that stand as before', async () => {
    const { first, second } = await twice('effort: 90 %', 'effort: 80 %');
    expect(second.athlete).toBe(first.athlete);
    const stateOf = (results: typeof first, name: string) =>
      results.ranking.find(({ program }) => program.name === name)?.program.state;
    expect(stateOf(second, 'deep squat')).toBe(stateOf(first, 'deep squat'));
    expect(stateOf(second, 'long holds')).not.toBe(stateOf(first, 'long holds'));
  });

  it.each([
    ['effort: 90 %', 'effort: 80 %'],
    ['mass: 65 kg', 'mass: 72 kg'],
    ['weeks: 8', 'weeks: 6'],
    ['sets: 4', 'sets: 2'],
    ['from: 75 deg', 'from: 60 deg'],
  ])('gives what a run of its own gives: %s → %s', async (from, to) => {
    const { second, text } = await twice(from, to);
    const { results } = await run('f.yaml', text);
    expect(text).not.toBe(startingScenario);
    expect(JSON.stringify(second)).toBe(JSON.stringify(results));
  });
});
