import { mkdtempSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { command } from './command.ts';

const page = readFileSync('scenarios/everyday-questions.md', 'utf8');

const commands = [...page.matchAll(/```sh\n([\s\S]*?)```/g)]
  .flatMap(([, body = '']) => body.trim().split('\n'))
  .map((line) => line.replace(/^npx torqueleaf /, ''));

/** Splits a command line at blanks outside quotes. */
const words = (line: string) =>
  [...line.matchAll(/"([^"]*)"|'([^']*)'|(\S+)/g)].map(
    ([, double, single, bare]) => double ?? single ?? bare ?? '',
  );

describe('the page of everyday questions', () => {
  const out = mkdtempSync(join(tmpdir(), 'torqueleaf-'));

  it('has sixteen questions', () => {
    expect(page.match(/^\*\*\d+\. /gm)).toHaveLength(16);
    expect(commands.length).toBeGreaterThan(12);
  });

  it.each(commands)('%s', (line) => {
    const writes = /^(report|retest)\b/.test(line) && !line.includes('--chat');
    const args = [...words(line), ...(writes ? ['--out', out] : [])];
    const { status, stdout, stderr } = command(...args);
    expect([status, stderr.includes('Error')]).toEqual([0, false]);
    expect(stdout.trim().length).toBeGreaterThan(0);
    expect(stdout).not.toMatch(/NaN|undefined/);
  });
});
