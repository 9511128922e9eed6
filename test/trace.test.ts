import { describe, expect, it } from 'vitest';
import { cellText } from '../src/notebook/formula/cellText.ts';
import { withValuesAt } from '../src/notebook/formula/fieldFormulas.ts';
import type { Path } from '../src/notebook/scenario.ts';
import { dottedOf, scalarOf } from '../src/notebook/text/placeInText.ts';
import { readSource } from '../src/notebook/text/source.ts';
import { sourceSection } from '../src/page/evidence.ts';
import { traceText } from '../src/page/traceText.ts';
import { displayWidth } from '../src/page/wrap.ts';
import { ask } from '../src/questions/ask.ts';
import { trace } from '../src/questions/trace/trace.ts';
import type { TraceNode } from '../src/questions/trace/traceNode.ts';
import { runSource } from '../src/run.ts';
import { Memory } from '../src/stages/memory.ts';

/** A file with every kind of thing that a number may come from; invented. */
const file = `title: Traced
angles: included
athlete:
  code: TR-01
  reference: male
  stature: 180 cm
  mass: 80 kg
  lengths: { thigh: 44 cm }
  training: 3 years
  response: 110 %
  limits: { knee flexion: 130 deg }
tests:
  - { action: knee extension, contraction: isometric, unit: N m, trials: { 140 deg: [150], 110 deg: [210], 90 deg: [205] } }
  - { action: knee flexion, contraction: isometric, unit: N m, with: { hip: 95 deg }, posture: seated, gravity: estimated, trials: { 150 deg: [95, 92], 120 deg: [110, 108], 95 deg: [98, 99] } }
  - { action: hip extension, contraction: isometric, unit: N m, trials: { 110 deg: [220] } }
  - { lift: back squat, to: 75 deg, best: 120 kg }
repeatability:
  - { action: knee extension, typical error: 5 %, from: 8 people × 2 days }
target: { action: knee extension, from: 100 deg, to: 75 deg, within: 4 weeks }
machines:
  leg machine: { load: 40 kg, torque: { 170 deg: 70 N m, 120 deg: 88 N m, 80 deg: 75 N m } }
chains:
  big chains: { weighs: 9 kg/m, length: 1.2 m, cord: 0.5 m }
lifts:
  low squat: { like: back squat, resistance: { kind: mass, on: "trunk, head and arms", along: 0.95, across: -8 cm }, assumed: [The bar sits lower.] }
programs:
  squats:
    weeks: 4
    sessions per week: 2
    work:
      - { lift: back squat, from: 180 deg, to: 80 deg, load: '= 0.6 * best("back squat", 75 deg)', chains: big chains, sets: 3, reps: 5 }
      - { lift: low squat, from: 180 deg, to: 90 deg, load: 70 %, sets: 2, reps: 6, tempo: 3-0-1, rest: 150 s }
    progress: 2 % per week
    deload: { week: 3, sets: half }
  others:
    like: squats
    change: { work.1.sets: 4 }
  machine and holds:
    weeks: 4
    sessions per week: 3
    work:
      - { lift: machine knee extension, machine: leg machine, from: 170 deg, to: 80 deg, load: 60 %, sets: 3, reps: 8 }
      - { hold: knee extension, at: 95 deg, effort: 85 %, sets: 3, reps: 4, seconds: 4 }
      - { isokinetic: knee extension, from: 170 deg, to: 90 deg, speed: 60 deg/s, way: both, effort: 90 %, sets: 2, reps: 6 }
  phased:
    phases:
      - weeks: 2
        sessions per week: 2
        work:
          - { hold: knee extension, at: 95 deg, effort: 80 %, sets: 3, reps: 4, seconds: 4 }
          - { lift: back squat, from: 180 deg, to: 80 deg, load: 60 kg, sets: 3, reps: 5 }
        progress: 2 % per week
        deload: { week: 1, sets: 60 % }
      - off: yes
        weeks: 1
      - weeks: 3
        sessions per week: 3
        work:
          - { hold: knee extension, at: 105 deg, effort: 85 %, sets: 3, reps: 4, seconds: 4 }
cells:
  share: = 0.9
  part of best: = share * best("back squat", 75 deg)
`;

const formulas = [
  'part_of_best / mass',
  'torque("knee extension", 90 deg)',
  'torque("knee flexion", 100 deg)',
  'segment("thigh") + segment("trunk")',
  'demand("low squat", 90 deg, 60 kg)',
  'effort("back squat", 90 deg, 60 kg)',
  'load("squats", 1)',
  'load("machine and holds", 1)',
  'minutes("others")',
  'minutes("phased")',
  'target_gain("phased")',
  'target_gain("squats")',
  'gain("machine and holds", 80 deg)',
  'hit_share("others")',
  'dose("squats", 100 deg, 75 deg)',
  'growth("squats", "vastus lateralis")',
  'muscle_sets("phased", "rectus femoris")',
  'target_to - target_from',
];

function parsed(text: string) {
  const { source } = readSource('f.yaml', text);
  if (!source) throw new Error('cannot be parsed');
  return source;
}

const memory = new Memory();
const source = parsed(file);

async function evaluated(changed = source) {
  const found = await runSource(changed, memory);
  if (found.problems) throw new Error(found.problems.map(({ message }) => message).join('; '));
  return found;
}

async function treeOf(formula: string): Promise<TraceNode> {
  const { results, source: known } = await evaluated();
  const found = await trace(results, known, formula);
  if ('fault' in found) throw new Error(found.fault.message);
  return found.tree;
}

const all = (node: TraceNode): TraceNode[] => [node, ...node.parts.flatMap(all)];

/** Every value of the file that begins with a number, with a slightly larger one to try. */
function numbersIn(value: unknown, path: Path = []): { path: Path; raised: string }[] {
  if (typeof value === 'object' && value !== null) {
    const keys = Array.isArray(value) ? [...value.keys()] : Object.keys(value);
    return keys.flatMap((key) => numbersIn(Reflect.get(value, key), [...path, key]));
  }
  const [, number, unit = ''] = /^(-?\d+(?:\.\d+)?)(.*)$/.exec(String(value)) ?? [];
  if (number === undefined || unit.startsWith('-') || unit.includes('people')) return [];
  const isCount = ['sets', 'reps', 'weeks', 'sessions per week', 'week'].includes(
    String(path.at(-1)).split('.').at(-1) ?? '',
  );
  // Angles are made smaller: no joint is straighter than 180°.
  const factor = unit.includes('deg') ? 0.98 : 1.02;
  const raised = isCount ? Number(number) + 1 : Number((Number(number) * factor).toFixed(4));
  return [{ path, raised: `${raised}${unit}` }];
}

describe('trace', () => {
  it('names every value of the file that moves the answer, found by moving each', async () => {
    const trees = await Promise.all(formulas.map(treeOf));
    const named = trees.map((tree) => new Set(all(tree).map(({ what }) => what)));
    const before = (await evaluated()).results;
    const missing: string[] = [];
    let moves = 0;
    for (const { path, raised } of numbersIn(source.value)) {
      const { results } = await evaluated({
        ...source,
        value: withValuesAt(source.value, [{ path, value: scalarOf(raised) }]),
      });
      for (const [i, formula] of formulas.entries()) {
        const [old, now] = [await ask(before, formula), await ask(results, formula)];
        if (!('result' in old) || !('result' in now)) throw new Error(formula);
        if (Math.abs(Number(now.result.value) - Number(old.result.value)) < 1e-9) continue;
        moves++;
        const above = path.map((_, depth) => dottedOf(path.slice(0, depth + 1)));
        // A change is named where the program that is like another has it.
        if (path.includes('change'))
          above.push('programs.others.work.1.sets', 'programs.others.work.1');
        // What a copied program says is placed in the program it is like.
        const copied = above.map((place) => place.replace('programs.squats', 'programs.others'));
        if (![...above, ...copied].some((place) => named[i]?.has(place)))
          missing.push(`${formula}: ${dottedOf(path)}`);
      }
    }
    expect(missing).toEqual([]);
    // Some sixty numbers, most of which move several of the answers.
    expect(moves).toBeGreaterThan(120);
  }, 120_000);

  it('gives each value of the file with the line it stands on', async () => {
    const nodes = all(await treeOf('target_gain("others")')).filter(({ at }) => at);
    const lines = file.split('\n');
    for (const { what, value, at } of nodes) {
      const line = lines[(at?.line ?? 0) - 1] ?? '';
      const last = what.split('.').at(-1) ?? '';
      const first = value?.split(/[ ,]/).at(-1) ?? '';
      expect(line.includes(first) || line.includes(last), `${what} = ${value}: ${line}`).toBe(true);
    }
    const sets = nodes.find(({ what }) => what === 'programs.others.work.1.sets');
    expect(sets).toMatchObject({
      value: '4',
      at: { line: lines.findIndex((l) => l.includes('change:')) + 1 },
    });
  });

  it('follows cells and formulas of fields to what they use', async () => {
    const ofCell = all(await treeOf('part_of_best')).map(({ what }) => what);
    expect(ofCell).toContain('cells.part of best: = share * best("back squat", 75 deg)');
    expect(ofCell).toContain('cells.share: = 0.9');
    const load = all(await treeOf('load("squats", 1)'));
    expect(
      load.find(({ what }) => what.startsWith('programs.squats.work.1.load: ='))?.parts[0],
    ).toMatchObject({
      what: 'best("back squat", 75 deg)',
      value: '120 kg',
    });
  });

  it('ends in the tables that the report names as its sources', async () => {
    const { results } = await evaluated();
    const [, , table] = sourceSection(results).blocks;
    const sources = table?.kind === 'table' ? table.rows.map((row) => row[2]) : [];
    const traced = all(await treeOf('target_gain() * 1'))
      .map(({ table: row }) => row?.source ?? '')
      .join('; ');
    expect(sources.length).toBeGreaterThan(15);
    for (const one of sources) expect(traced).toContain(one?.split(';')[0]);
  });

  it('says what is wrong with a formula, as ask does', async () => {
    const { results, source: known } = await evaluated();
    expect(await trace(results, known, 'torque("knee")')).toEqual({
      fault: ((await ask(results, 'torque("knee")')) as { fault: object }).fault,
    });
  });

  it.each([40, 80])('is told in %i columns, each step once', async (width) => {
    const tree = await treeOf('target_gain("squats") - target_gain("others")');
    const text = traceText(tree, 'f.yaml', width);
    expect(Math.max(...text.split('\n').map(displayWidth))).toBeLessThanOrEqual(width);
    expect(text.replace(/\s+/g, ' ')).toContain(
      `= ${cellText(((await ask((await evaluated()).results, 'target_gain("squats") - target_gain("others")')) as { result: Parameters<typeof cellText>[0] }).result)}`,
    );
    expect(text.match(/^ *the body$/gm)).toHaveLength(1);
    expect(text).not.toMatch(/undefined|NaN/);
  });
});
