import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { scenarioJsonSchema } from '../../src/notebook/scenarioJsonSchema.ts';

const path = 'scenarios/scenario.schema.json';
const now = `${JSON.stringify(scenarioJsonSchema(), null, 1)}\n`;

describe('JSON Schema of a scenario', () => {
  it('is committed as the schema gives it (UPDATE=1 rewrites)', () => {
    if (process.env.UPDATE) writeFileSync(path, now);
    expect(readFileSync(path, 'utf8')).toBe(now);
  });

  it('asks for the groups of a scenario unless it includes files, for angles always', () => {
    const { required, anyOf } = JSON.parse(now) as { required: unknown; anyOf: unknown };
    expect(required).toEqual(['angles']);
    expect(anyOf).toEqual([
      { required: ['include'] },
      { required: ['title', 'angles', 'target', 'programs'] },
    ]);
  });

  it('names and explains every group of the demo files', () => {
    const { properties } = JSON.parse(now) as {
      properties: Record<string, { description?: string }>;
    };
    for (const name of readdirSync('scenarios').filter((file) => file.endsWith('.yaml'))) {
      const text = readFileSync(`scenarios/${name}`, 'utf8');
      for (const [, key = ''] of text.matchAll(/^([a-z]+):/gm))
        expect(properties[key]?.description, `${name}: ${key}`).toBeTruthy();
    }
  });
});
