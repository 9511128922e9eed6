import { describe, expect, it } from 'vitest';
import { toRadians } from '../../src/numeric/degrees.ts';
import { drawHeatMap } from '../../src/page/heatMap.ts';
import type { Block } from '../../src/page/report.ts';
import { setsByAngle, setsByMuscle } from '../../src/page/setsByAngle.ts';

const range = (fromDeg: number, toDeg: number) => ({
  from: toRadians(fromDeg),
  to: toRadians(toDeg),
});
const bands = [range(0, 25), range(25, 50)];
const question = { action: 'knee extension', target: range(20, 40) } as const;

interface Phase {
  readonly sets: readonly [number, number];
  readonly weeks: number;
  readonly deloads?: readonly { readonly week: number; readonly sets: number }[];
}

/** A program of invented phases, each with the sets of its two bands. */
function program(name: string, phases: readonly Phase[], beyond = 0) {
  const weekly = phases.flatMap(({ sets, weeks, deloads = [] }) =>
    Array.from({ length: weeks }, (_, i) => {
      const share = deloads.find(({ week }) => week === i + 1)?.sets ?? 1;
      return sets.map((one) => one * share);
    }),
  );
  const starts = phases.map((_, i) => phases.slice(0, i).reduce((sum, one) => sum + one.weeks, 1));
  return {
    name,
    bands,
    phases: phases.map(({ weeks, deloads = [] }, i) => {
      const from = starts[i] ?? 1;
      return { from, to: from + weeks - 1, deloads };
    }),
    weekly: weekly.map((hardSetsByBand, i) => ({
      week: i + 1,
      hardSets: { 'knee extension': hardSetsByBand.reduce((a, b) => a + b, 0) + beyond },
      hardSetsByBand,
      hardSetsByMuscle: {},
      gain: 0,
    })),
  };
}

const texts = (blocks: readonly Block[]) =>
  blocks.flatMap((block) => (block.kind === 'text' ? [block.text] : []));
const maps = (blocks: readonly Block[]) =>
  blocks.flatMap((block) => (block.kind === 'map' ? [block.map] : []));

describe('sets by angle over the weeks', () => {
  it('of a program whose weeks are alike are one sentence', () => {
    const alike = [
      program('holds', [{ sets: [0.04, 10.52], weeks: 8 }]),
      program('idle', [{ sets: [0, 0], weeks: 1 }]),
    ];
    const [head = '', ...said] = texts(setsByAngle(alike, question));
    expect(head).toBe(
      'Where the sets of the knee extensors land, by knee angle (target 20–40°): effective sets a week. Neighbouring weeks that are much alike stand together as their mean, in long programs also less alike ones. Work at the edge of two bands counts half in each.',
    );
    expect(said).toEqual([
      '"holds", weeks 1–8: 10.5 at 25–50°.',
      '"idle", week 1: no work at these angles.',
    ]);
    expect(maps(setsByAngle(alike, question))).toEqual([]);
  });

  it('of one that changes are a map, by weeks that are alike', () => {
    const season = program('season', [
      { sets: [2, 4], weeks: 4 },
      { sets: [0, 0], weeks: 2 },
      { sets: [0, 10], weeks: 3 },
    ]);
    const blocks = setsByAngle([season], question);
    expect(texts(blocks)).toHaveLength(2);
    expect(texts(blocks)[1]).toBe('"season":');
    expect(maps(blocks)).toEqual([
      {
        rows: ['0–25°', '25–50°'],
        columns: ['1–4', '5–6', '7–9'],
        values: [
          [2, 0, 0],
          [4, 0, 10],
        ],
        amounts: { most: 10, decimals: 1, none: 'no work, or hardly any' },
      },
    ]);
  });

  it('say in words how much lighter weeks have', () => {
    const deloads = [
      { week: 2, sets: 0.5 },
      { week: 4, sets: 0.5 },
    ];
    const half = program('lighter', [{ sets: [0, 4], weeks: 5, deloads }]);
    expect(texts(setsByAngle([half], question))[1]).toBe(
      '"lighter", weeks 1–5 (weeks 2 and 4 apart, with 50 % of the sets): 4.0 at 25–50°.',
    );
    // Weeks are counted through the phases: the third week of the second phase is week 7.
    const phases: readonly Phase[] = [
      { sets: [4, 0], weeks: 4 },
      { sets: [0, 4], weeks: 4, deloads: [{ week: 3, sets: 0.25 }] },
    ];
    const blocks = setsByAngle([program('two', phases)], question);
    expect(texts(blocks)[1]).toBe('"two" (week 7 apart, with 25 % of the sets):');
    expect(maps(blocks)[0]?.columns).toEqual(['1–4', '5–8']);
  });

  it('show a phase that is lighter throughout as it is', () => {
    const taper: readonly Phase[] = [
      { sets: [0, 4], weeks: 3 },
      { sets: [0, 4], weeks: 1, deloads: [{ week: 1, sets: 0.5 }] },
    ];
    const [map] = maps(setsByAngle([program('taper', taper)], question));
    expect(map?.columns).toEqual(['1–3', '4']);
    expect(map?.values[1]).toEqual([4, 2]);
  });

  it('share one scale of shades, and say what lies beyond the angles', () => {
    const change = (sets: number): readonly Phase[] => [
      { sets: [0, sets], weeks: 2 },
      { sets: [0, 0], weeks: 1 },
    ];
    const blocks = setsByAngle(
      [program('small', change(1), 0.17), program('large', change(9))],
      question,
    );
    expect(maps(blocks).map(({ amounts }) => amounts?.most)).toEqual([9, 9]);
    expect(texts(blocks)[0]).toMatch(
      / Work beyond these angles is not shown \(up to 0\.2 sets a week\)\.$/,
    );
  });

  it('of a year in 26 blocks stay within 12 columns, in two blocks of a report or four of a phone', () => {
    const year = Array.from(
      { length: 26 },
      (_, i): Phase => ({
        sets: [i % 3, 2 + (i % 5) * 2],
        weeks: 2,
        deloads: [{ week: 2, sets: 0.5 }],
      }),
    );
    const [map] = maps(setsByAngle([program('year', year)], question));
    if (!map) throw new Error('no map');
    expect(map.columns.length).toBeGreaterThan(1);
    expect(map.columns.length).toBeLessThanOrEqual(12);
    for (const width of [38, 80]) {
      const lines = drawHeatMap(map, width);
      for (const line of lines) expect(line.length).toBeLessThanOrEqual(width);
      // By hand: blocks of a head, two rows and a blank, then a legend of at most three lines.
      expect(lines.length).toBeLessThanOrEqual((width < 80 ? 4 : 2) * 4 + 3);
      expect(lines.join('\n').length).toBeLessThanOrEqual(1500);
    }
  });

  it('by muscle are a map of the first program, of those that work for the target', () => {
    const season = program('season', [
      { sets: [2, 4], weeks: 2 },
      { sets: [0, 0], weeks: 1 },
    ]);
    const named = (sets: readonly number[]) => ({ vastus: sets[0] ?? 0, rectus: sets[1] ?? 0 });
    const weekly = season.weekly.map((week) => ({
      ...week,
      hardSetsByMuscle: named(week.hardSetsByBand),
    }));
    const blocks = setsByMuscle([{ ...season, weekly }, season]);
    expect(maps(blocks)).toEqual([
      {
        rows: ['vastus', 'rectus'],
        columns: ['1–2', '3'],
        values: [
          [2, 0],
          [4, 0],
        ],
        amounts: { most: 4, decimals: 1, none: 'no work, or hardly any' },
      },
    ]);
    // Without muscles in the tables there is nothing to tell apart.
    expect(setsByMuscle([season])).toEqual([]);
  });
});
