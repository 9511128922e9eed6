import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readScenario } from '../../src/notebook/readScenario.ts';
import type { Observed, Study } from '../../src/notebook/study/study.ts';
import { formatProblems } from '../../src/notebook/text/problem.ts';
import { toDegrees } from '../../src/numeric/degrees.ts';
import { fullReport } from '../../src/page/fullReport.ts';
import { renderMarkdown } from '../../src/page/markdown.ts';
import { run } from '../../src/run.ts';
import { notWritten, written } from './writtenGroups.ts';

const folder = 'scenarios/studies';
const files = readdirSync(folder).filter((name) => name.endsWith('.yaml'));
const textOf = (name: string) => readFileSync(`${folder}/${name}`, 'utf8');

const studies = new Map<string, Promise<Study>>();
function studyOf(name: string): Promise<Study> {
  const study = studies.get(name) ?? readStudyFile(name);
  studies.set(name, study);
  return study;
}

async function readStudyFile(name: string): Promise<Study> {
  const text = textOf(`${name}.yaml`);
  const { scenario, problems } = await readScenario(name, text);
  if (!scenario?.study) throw new Error(formatProblems(problems ?? [], () => text));
  return scenario.study;
}

async function groupOf(name: string, program: string) {
  const group = (await studyOf(name)).groups.find((one) => one.program === program);
  if (!group) throw new Error(`${name}: ${program}`);
  return group;
}

describe.each(files)('%s', (name) => {
  it('can be run like any scenario', async () => {
    const text = textOf(name);
    const { results, problems } = { results: undefined, ...(await run(name, text)) };
    expect(formatProblems(problems ?? [], () => text)).toBe('');
    for (const { program } of results?.ranking ?? [])
      expect(Number.isFinite(program.landing.meanGain)).toBe(true);
  });

  it('names its source, says that it is published, and what was assumed of every group', async () => {
    const { scenario } = await readScenario(name, textOf(name));
    const study = scenario?.study;
    expect(scenario?.note).toMatch(/^Published data, not invented\./);
    expect(scenario?.title).toContain(String(study?.cited.year));
    expect(study?.groups.length).toBe(scenario?.programs.length);
  });
});

// Every file's report would take long; these hold what the demo files do not: a declared lift,
// included angles, an elbow.
it.each(['kassiano-2023.yaml', 'narici-1996.yaml', 'maeo-2023.yaml'])(
  '%s can be reported, observed values aside',
  async (name) => {
    const { results } = { results: undefined, ...(await run(name, textOf(name))) };
    if (!results) throw new Error(name);
    const report = renderMarkdown(fullReport(results));
    expect(report).toContain('Published data, not invented.');
    expect(report).not.toMatch(/NaN|Infinity|undefined/);
  },
);

describe('the set of files', () => {
  it('holds every group on the list, each once, and no other', async () => {
    const names = files.map((file) => file.replace('.yaml', ''));
    expect(Object.keys(written).toSorted()).toEqual(names.toSorted());
    for (const name of names) {
      const study = await studyOf(name);
      const listed = new Set(Object.values(written[name] ?? {}));
      expect([...listed].toSorted(), name).toEqual(study.groups.map((g) => g.program).toSorted());
    }
  });

  it('leaves out only groups with a reason, none of which has a file', () => {
    const listed = Object.values(written).flatMap((groups) => Object.keys(groups));
    for (const [id, reason] of Object.entries(notWritten)) {
      expect(listed).not.toContain(id);
      expect(reason.length).toBeGreaterThan(20);
    }
    // 86 groups to learn strength, growth, fibre length or the strongest angle from, 8 not written.
    expect(new Set(listed).size).toBe(86);
    expect(Object.keys(notWritten)).toHaveLength(8);
  });

  it('a group without outcomes says what its source does tell', async () => {
    for (const name of Object.keys(written))
      for (const group of (await studyOf(name)).groups)
        if (group.observed.length === 0) expect(group.leftOut.length, name).toBeGreaterThan(0);
  });
});

/** Kind, what, angles in degrees of flexion, change in %, spread in %, as the paper gives them. */
const row = ({ outcome, found }: Observed) => {
  const [from, to] = 'from' in outcome ? [outcome.from, outcome.to] : [];
  const angle = (value: number | undefined) =>
    value === undefined ? [] : [Math.round(toDegrees(value))];
  const percent = (value: number) => Number((100 * value).toFixed(6));
  if (found.kind === 'direction') return [outcome.kind, outcome.of, found.direction];
  const { change, spread } = found;
  return [
    outcome.kind,
    outcome.of,
    ...angle(from),
    ...angle(to),
    percent(change),
    spread.kind,
    ...(spread.kind === 'unknown' ? [] : [percent(spread.value)]),
  ];
};

describe('two files number by number', () => {
  /** Hartmann 2012, J Strength Cond Res 26:3243, as extracted by a published meta-analysis. */
  it.each([
    [
      'deep squat',
      20,
      [
        ['single', 'front squat', 0, 110, 20.1, 'se', 7.7],
        ['single', 'back squat', 0, 110, 26.5, 'se', 7.7],
        ['single', 'back squat', 0, 60, 25.2, 'se', 5.6],
        ['isometric', 'leg press', 60, 60, -2.2, 'se', 4.3],
      ],
    ],
    [
      'quarter squat',
      19,
      [
        ['single', 'front squat', 0, 110, -0.7, 'se', 5],
        ['single', 'back squat', 0, 110, -5.1, 'se', 5.2],
        ['single', 'back squat', 0, 60, 35.4, 'se', 4.3],
        ['isometric', 'leg press', 60, 60, -14, 'se', 3],
      ],
    ],
  ])('Hartmann 2012, %s, written with included angles', async (program, people, expected) => {
    const group = await groupOf('hartmann-2012', program);
    expect(group.people).toBe(people);
    expect(group.observed.map(row)).toEqual(expected);
  });

  /** Kubo, Ikebukuro and Yata 2019, Eur J Appl Physiol 119:1933, abstract. */
  it.each([
    [
      'full squat',
      8,
      [
        ['single', 'back squat', 0, 140, 31.8, 'sd', 14.9],
        ['single', 'back squat', 0, 90, 24.2, 'sd', 7.1],
        ['growth', 'quadriceps', 4.9, 'sd', 2.6],
        ['growth', 'adductors', 6.2, 'sd', 2.6],
        ['growth', 'gluteus maximus', 6.7, 'sd', 3.5],
      ],
    ],
    [
      'half squat',
      9,
      [
        ['single', 'back squat', 0, 140, 11.3, 'sd', 8.6],
        ['single', 'back squat', 0, 90, 32, 'sd', 12.1],
        ['growth', 'quadriceps', 4.6, 'sd', 3.1],
        ['growth', 'adductors', 2.7, 'sd', 3.1],
        ['growth', 'gluteus maximus', 2.2, 'sd', 2.6],
      ],
    ],
  ])('Kubo 2019, %s', async (program, people, expected) => {
    const group = await groupOf('kubo-2019', program);
    expect(group.people).toBe(people);
    expect(group.observed.map(row)).toEqual(expected);
  });
});
