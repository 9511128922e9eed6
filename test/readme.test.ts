import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { formatProblems } from '../src/notebook/text/problem.ts';
import { run } from '../src/run.ts';

const readme = readFileSync('README.md', 'utf8');

const blocks = (language: string) =>
  [...readme.matchAll(new RegExp(`\`\`\`${language}\n([\\s\\S]*?)\`\`\``, 'g'))].map(
    ([, body = '']) => body,
  );

describe('README', () => {
  it('its first heading is followed by the job in one paragraph', () => {
    const [, first = ''] = readme.split('\n\n');
    expect(first).toMatch(/^A strength coach must make an athlete stronger at the joint angles/);
  });

  it('its test command is the one that .ci/run calls', () => {
    const [line = ''] = blocks('sh')
      .join('')
      .split('\n')
      .filter((l) => l.includes('npm test'));
    const command = line.split('#')[0]?.trim() ?? '';
    expect(command).toBe('npm ci && npm test');
    expect(readFileSync('.ci/run', 'utf8')).toContain(`\n${command}\n`);
  });

  it('its scenario is a good one', async () => {
    const [yaml = ''] = blocks('yaml');
    const { results, problems } = { results: undefined, ...(await run('README.yaml', yaml)) };
    expect(formatProblems(problems ?? [], () => yaml)).toBe('');
    expect(results?.ranking).toHaveLength(2);
  });

  it('its chains and bands can be put into it', async () => {
    const [yaml = '', rig = ''] = blocks('yaml');
    const work = /(- \{ lift.*\})/.exec(rig)?.[1] ?? '';
    const whole = yaml
      .replace(/- \{ lift: back squat, from.*/, () => work)
      .replace('target:', () => `${rig}target:`);
    const { results, problems } = { results: undefined, ...(await run('README.yaml', whole)) };
    expect(formatProblems(problems ?? [], () => whole)).toBe('');
    const planned = results?.ranking.flatMap(({ program }) => program.plan.exercises) ?? [];
    expect(planned.some(({ rigUse }) => rigUse !== undefined)).toBe(true);
    expect(Object.keys(results?.scenario.bands ?? {})).toEqual(['rack loops', 'home loops']);
  });

  it('its scenario may include its athlete and its chains and bands', async () => {
    const [yaml = '', rig = ''] = blocks('yaml');
    const include = blocks('yaml').find((block) => block.startsWith('include:')) ?? '';
    const [, athlete = ''] = /^(athlete:[\s\S]*?)(?=^target:)/m.exec(yaml) ?? [];
    const files = new Map([
      ['athletes/SN-04.yaml', `angles: flexion\n${athlete}`],
      ['equipment.yaml', rig],
    ]);
    const whole = yaml.replace(athlete, include);
    const found = await run('README.yaml', whole, (path) => ({ text: files.get(path) ?? '' }));
    expect(formatProblems(found.problems ?? [], () => whole)).toBe('');
    expect(found.results?.ranking).toHaveLength(2);
    expect(Object.keys(found.results?.scenario.bands ?? {})).toEqual(['rack loops', 'home loops']);
  });

  it('its cells can be put into it and are as expected', async () => {
    const [yaml = ''] = blocks('yaml');
    const cells = blocks('yaml').find((block) => block.startsWith('cells:')) ?? '';
    const found = await run('README.yaml', yaml + cells);
    expect(formatProblems(found.problems ?? found.broken, () => yaml + cells)).toBe('');
    expect(found.results?.cells).toHaveLength(3);
  });

  it('its notebook can be put into it with its cells', async () => {
    const [yaml = ''] = blocks('yaml');
    const own = ['cells:', 'notebook:'].map((key) =>
      blocks('yaml').find((block) => block.startsWith(key)),
    );
    const whole = [yaml, ...own].join('');
    const { results, problems } = { results: undefined, ...(await run('README.yaml', whole)) };
    expect(formatProblems(problems ?? [], () => whole)).toBe('');
    expect(results?.scenario.notebook).toHaveLength(3);
  });

  it('its declared lifts are good ones', async () => {
    const [yaml = '', , own = ''] = blocks('yaml');
    const { results, problems } = { results: undefined, ...(await run('README.yaml', yaml + own)) };
    expect(formatProblems(problems ?? [], () => yaml + own)).toBe('');
    expect(results?.scenario.lifts.map(({ name }) => name)).toEqual([
      'safety bar squat',
      'cable kickback',
    ]);
  });

  it('the report it shows is cut from the golden one', () => {
    const report = readFileSync('reports/ski-deep-range.md', 'utf8');
    const shown = readme.split('## The report it gives')[1]?.split('Below that')[0] ?? '';
    const lines = shown.split('\n').filter((line) => line.startsWith('> '));
    expect(lines.length).toBeGreaterThan(15);
    for (const line of lines) expect(report).toContain(line.slice(2));
  });
});
