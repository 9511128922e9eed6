import { spawnSync } from 'node:child_process';
import { beforeAll, describe, expect, it } from 'vitest';
import { includes, secret } from './hostile/includes.ts';
import { hostileScenarios } from './hostile/scenarios.ts';

/** A scenario may come from a stranger: none may hang, throw, change anything or reach the terminal raw. */

interface Outcome {
  readonly ends?: string;
  readonly milliseconds: number;
  readonly shownIn: number;
  readonly said: string;
  readonly problems: number;
  readonly located: boolean;
  readonly pages: readonly [terminal: string, markdown: string, json: string] | readonly [];
  readonly thrown?: string;
  readonly polluted: boolean;
}

// A second on an idle machine; the processor of a busy one is slower too.
const longest = 3000;
/** As much training as is computed at all: bounded, but no matter of a second. */
const atTheLimit = 'as many lifts as are computed';
const outcomes = new Map<string, Outcome>();

beforeAll(() => {
  const child = spawnSync(
    process.execPath,
    ['--max-old-space-size=512', '--import', 'tsx', 'test/runHostileScenarios.ts'],
    { encoding: 'utf8', maxBuffer: 1e9, timeout: 240_000 },
  );
  for (const line of child.stdout.split('\n').filter((text) => text !== '')) {
    const outcome: Outcome = JSON.parse(line);
    if (outcome.ends !== undefined) outcomes.set(outcome.ends, outcome);
  }
  expect(child.stderr).toBe('');
  expect(child.status).toBe(0);
}, 250_000);

// biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for
const raw = /[\u0000-\u0008\u000b-\u001f\u007f-\u009f\u2028-\u202e\u2066-\u2069]/;

/** Rows of a markdown table whose cells are not as many as those of the row above. */
function brokenRows(markdown: string): string[] {
  const lines = markdown.split('\n');
  const bars = (line: string) => line.replace(/\\[\\|]/g, '').split('|').length;
  return lines.filter((line, i) => {
    const above = lines[i - 1] ?? '';
    return line.startsWith('| ') && above.startsWith('| ') && bars(line) !== bars(above);
  });
}

/** Signs of HTML that a browser would obey. */
function markup(markdown: string): string[] {
  const unfenced = markdown.replace(/^(`{3,})text\n[\s\S]*?\n\1$/gm, '');
  const plain = unfenced.replace(/(?<![\\`])(`+)(?!`)[^`]+\1(?!`)/g, '').replaceAll('<br>', '');
  return plain.match(/(?<!\\)<[a-z/!?][^\n]{0,30}/gi) ?? [];
}

describe('scenarios of a stranger', () => {
  it('are at least 40, each with a name of its own', () => {
    expect(hostileScenarios.length).toBeGreaterThanOrEqual(40);
    expect(new Set(hostileScenarios.map(({ name }) => name)).size).toBe(hostileScenarios.length);
  });

  it.each(hostileScenarios.map(({ name, tries }) => [name, tries]))('%s: %s', (name) => {
    const outcome = outcomes.get(name);
    if (!outcome) throw new Error('the process ended before this scenario did');
    expect(outcome.thrown).toBeUndefined();
    expect(outcome.polluted).toBe(false);
    if (name !== atTheLimit) expect(outcome.milliseconds + outcome.shownIn).toBeLessThan(longest);
    expect(outcome.located).toBe(true);
    expect(outcome.said).not.toMatch(raw);
    expect(outcome.said).not.toContain(secret);
    const [terminal, markdown, json] = outcome.pages ?? [];
    expect(outcome.problems > 0 || terminal !== undefined).toBe(true);
    for (const page of [terminal, markdown, json]) if (page) expect(page).not.toMatch(raw);
    expect(brokenRows(markdown ?? '')).toEqual([]);
    expect(markup(markdown ?? '')).toEqual([]);
  });

  it.each(includes.map(([name]) => [name]))('%s is refused', (name) => {
    expect(outcomes.get(name)?.problems).toBeGreaterThan(0);
  });
});
