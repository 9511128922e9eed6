import { readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { errorSentence } from '../src/page/evidenceKinds.ts';
import { shortMuscle } from '../src/page/shortMuscle.ts';
import { errorsByKind, errsOneWay } from '../src/tables/errorsByKind.ts';
import type { EvidenceOutcome } from '../src/tables/evidenceResults.ts';
import { kindsOfWork } from '../src/tables/kindsOfWork.ts';
import { lifts } from '../src/tables/lifts.ts';
import { muscles } from '../src/tables/muscles.ts';

const finding = (predicted: number, observed: number): EvidenceOutcome => ({
  what: 'invented',
  family: 'strength',
  predicted,
  observed,
});

/** Two studies of squats with invented findings. */
const results = (first: readonly EvidenceOutcome[], second: readonly EvidenceOutcome[]) => ({
  studies: [first, second].map((outcomes, i) => ({
    name: ['kubo-2019', 'rhea-2016'][i] ?? '',
    title: 'invented',
    amplitude: 1,
    groups: [{ program: 'one', trained: false, outcomes }],
  })),
});

describe('kinds of work', () => {
  it('have every study file once, and lifts of the catalogue only', () => {
    const files = readdirSync('scenarios/studies').map((name) => name.replace(/\.yaml$/, ''));
    expect(kindsOfWork.flatMap(({ studies }) => studies).sort()).toEqual(files.sort());
    const names = lifts.map(({ name }) => name);
    for (const { lifts: own } of kindsOfWork) for (const lift of own) expect(names).toContain(lift);
  });

  it('err by the means and the side of their findings (hand calculation: 60/3 = 20 against 30/3 = 10)', () => {
    const [found] = errorsByKind(results([finding(20, 8), finding(10, 4)], [finding(30, 18)]));
    expect(found).toMatchObject({ studies: 2, count: 3, predicted: 20, observed: 10, tooHigh: 3 });
    if (!found) throw new Error('no kind');
    expect(errsOneWay(found)).toBe(true);
    expect(errorSentence([found])).toBe(
      'Studies of squats: strength rose by 10 % on average where the model, not having seen them, gave 20 % (2 studies).',
    );
  });

  it.each([
    ['one study', [finding(20, 8), finding(20, 8), finding(20, 8)], []],
    ['two findings', [finding(20, 8)], [finding(20, 8)]],
    ['means alike', [finding(20, 18), finding(20, 18)], [finding(20, 18)]],
    ['both sides', [finding(30, 8), finding(30, 8)], [finding(4, 5)]],
  ] as const)('do not err one way by %s', (_, first, second) => {
    const [found] = errorsByKind(results(first, second));
    if (!found) throw new Error('no kind');
    expect(errsOneWay(found)).toBe(false);
  });
});

describe('short names of muscles', () => {
  it('tell every muscle from the others within 13 signs', () => {
    const cut = muscles.map(({ name }) => shortMuscle(name).slice(0, 13));
    expect(new Set(cut).size).toBe(muscles.length);
  });
});
