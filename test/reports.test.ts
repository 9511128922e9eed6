import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { reportsOf } from '../src/commands/reportsOf.ts';
import { run } from '../src/run.ts';

/** Reports in the folder are what the scenarios give now. `UPDATE=1 npm test` rewrites them. */

const scenarios = readdirSync('scenarios').filter((name) => name.endsWith('.yaml'));

async function rendered(name: string) {
  const file = `scenarios/${name}`;
  const { results } = { results: undefined, ...(await run(file, readFileSync(file, 'utf8'))) };
  if (!results) throw new Error(`${file} has problems`);
  return reportsOf(file, results);
}

describe('golden reports', () => {
  it.each(scenarios)('%s', async (name) => {
    for (const { name: report, text } of await rendered(name)) {
      const path = `reports/${report}`;
      if (process.env.UPDATE === '1') {
        mkdirSync('reports', { recursive: true });
        writeFileSync(path, text);
      }
      expect(text).toBe(readFileSync(path, 'utf8'));
    }
  });

  it('the same bytes on every run', async () => {
    const [name = ''] = scenarios;
    expect(await rendered(name)).toEqual(await rendered(name));
  });

  it('no report has an undetermined number, a date of today or a machine’s path', async () => {
    for (const name of scenarios) {
      const text = (await rendered(name)).map((report) => report.text).join('\n');
      expect(text).not.toMatch(/NaN|Infinity|undefined|not determined|\/home\/|\/work\//);
      expect(text).not.toContain(new Date().toISOString().slice(0, 10));
    }
  });
});
