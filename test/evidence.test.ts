import { readFileSync, writeFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { evidencePage } from '../src/page/evidencePage.ts';
import { renderMarkdown } from '../src/page/markdown.ts';
import { inPoints } from '../src/stages/study/findingRows.ts';
import { predictStudy } from '../src/stages/study/predictGroup.ts';
import { studyCase } from '../src/stages/study/studyCase.ts';
import { coefficients, contrastMiss, gainMiss } from '../src/tables/adaptation.ts';
import { evidence } from '../src/tables/evidence.ts';

/** The stored results of the last calibration: a part is worked out anew and compared. */

const scored = evidence.studies.flatMap((study) =>
  study.groups.flatMap((group) =>
    group.outcomes.flatMap((outcome) => {
      const { predicted, observed, low, high } = outcome;
      return predicted === undefined || observed === undefined
        ? []
        : [
            {
              ...outcome,
              study: study.name,
              group: group.program,
              predicted,
              observed,
              low: low ?? Number.NaN,
              high: high ?? Number.NaN,
            },
          ];
    }),
  ),
);

describe('stored evidence', () => {
  it('makes the report in the folder; UPDATE=1 rewrites it', () => {
    const now = renderMarkdown(evidencePage());
    if (process.env.UPDATE === '1') writeFileSync('reports/evidence.md', now);
    expect(now).toBe(readFileSync('reports/evidence.md', 'utf8'));
    expect(now).not.toMatch(/NaN|Infinity|undefined/);
  });

  // Files without squats, whose statics take seconds; with holds, lifts and set speeds.
  it.each(['noorkoiv-2014', 'valamatos-2018', 'maeo-2023', 'sato-2021'])(
    'holds what the model with the coefficients in the tables says of %s',
    async (name) => {
      const text = readFileSync(`scenarios/studies/${name}.yaml`, 'utf8');
      const now = predictStudy(await studyCase(name, text), coefficients);
      const stored = evidence.studies.find((study) => study.name === name);
      expect(stored?.groups.length).toBe(now.length);
      stored?.groups.forEach((group, g) => {
        group.outcomes.forEach(({ fitted, family, what }, i) => {
          const change = now[g]?.[i]?.change;
          if (fitted === undefined || change === undefined) return;
          // Stored to a tenth and the amplitude to a hundredth; work is recorded once more here.
          const own = (stored?.amplitude ?? 1) * inPoints(family, change);
          expect(Math.abs(own - fitted), what).toBeLessThan(0.06 + 0.012 * Math.abs(own));
        });
      });
    },
  );

  it('counts what it shows: miss, coverage and directions from the rows alone', () => {
    const strength = scored.filter(({ family }) => family === 'strength');
    const squares = strength.map((row) => (row.observed - row.predicted) ** 2);
    const miss = Math.sqrt(squares.reduce((sum, v) => sum + v, 0) / squares.length);
    const [model] = evidence.scores;
    expect(model?.families.strength.count).toBe(strength.length);
    expect(Math.abs(miss - (model?.families.strength.miss ?? 0))).toBeLessThan(0.1);
    const inside = strength.filter((row) => row.observed >= row.low && row.observed <= row.high);
    const stored = evidence.coverage.find(({ family }) => family === 'strength');
    // One on the edge may fall either way by rounding.
    expect(Math.abs(inside.length - (stored?.inside ?? 0))).toBeLessThanOrEqual(1);
    const clear = strength.flatMap((a, i) =>
      strength
        .slice(i + 1)
        .filter((b) => b.study === a.study && b.group !== a.group && b.what === a.what)
        .filter((b) => Math.abs(a.observed - b.observed) >= 4 - 1e-9)
        .map((b) => (a.observed - b.observed) * (a.predicted - b.predicted) > 0),
    );
    expect(clear.length).toBe(model?.strengthDirections?.count);
    const right = clear.filter(Boolean).length;
    expect(Math.abs(right - (model?.strengthDirections?.right ?? 0))).toBeLessThanOrEqual(1);
  });

  it('gives the shares by which reports judge "give or take" and ties: the left-out misses, from the rows alone', () => {
    const strength = scored.filter(({ family }) => family === 'strength');
    const meanSquare = (values: readonly number[]) =>
      values.reduce((sum, v) => sum + v * v, 0) / values.length;
    const gain =
      meanSquare(strength.map((row) => row.observed - row.predicted)) /
      meanSquare(strength.map((row) => row.predicted));
    // Rows are stored to a tenth of a point, the shares to a hundredth.
    expect(Math.abs(Math.sqrt(gain) - gainMiss.value)).toBeLessThan(0.01);
    const pairs = strength.flatMap((a, i) =>
      strength
        .slice(i + 1)
        .filter((b) => b.study === a.study && b.group !== a.group && b.what === a.what)
        .map((b) => ({
          miss: a.observed - b.observed - (a.predicted - b.predicted),
          larger: Math.max(a.predicted, b.predicted),
        })),
    );
    const contrast =
      meanSquare(pairs.map(({ miss }) => miss)) / meanSquare(pairs.map(({ larger }) => larger));
    expect(Math.abs(Math.sqrt(contrast) - contrastMiss.value)).toBeLessThan(0.01);
  });

  it('hides no study: all files, and every finding is scored, told by direction, unpredicted or for the record', () => {
    expect(evidence.studies.length).toBe(46);
    for (const { groups } of evidence.studies)
      for (const { outcomes } of groups)
        for (const one of outcomes)
          expect(
            one.predicted !== undefined ||
              one.found !== undefined ||
              one.because !== undefined ||
              one.record,
          ).toBe(true);
  });
});
