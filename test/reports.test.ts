import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { fullReport } from '../src/page/fullReport.ts';
import { renderMarkdown } from '../src/page/markdown.ts';
import { run } from '../src/run.ts';

/** Reports in the folder are what the scenarios give now. `UPDATE=1 npm test` rewrites them. */

const scenarios = readdirSync('scenarios').filter((name) => name.endsWith('.yaml'));

async function rendered(name: string): Promise<string> {
  const file = `scenarios/${name}`;
  const { results } = { results: undefined, ...(await run(file, readFileSync(file, 'utf8'))) };
  if (!results) throw new Error(`${file} has problems`);
  return renderMarkdown(fullReport(results));
}

describe('golden reports', () => {
  it.each(scenarios)('%s', async (name) => {
    const path = `reports/${name.replace('.yaml', '.md')}`;
    const now = await rendered(name);
    if (process.env.UPDATE === '1') {
      mkdirSync('reports', { recursive: true });
      writeFileSync(path, now);
    }
    expect(now).toBe(readFileSync(path, 'utf8'));
  });

  it('the same bytes on every run', async () => {
    const [name = ''] = scenarios;
    expect(await rendered(name)).toBe(await rendered(name));
  });

  it('no report has an undetermined number, a date of today or a machine’s path', async () => {
    for (const name of scenarios) {
      const text = await rendered(name);
      expect(text).not.toMatch(/NaN|Infinity|undefined|not determined|\/home\/|\/work\//);
      expect(text).not.toContain(new Date().toISOString().slice(0, 10));
    }
  });
});
