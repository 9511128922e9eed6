import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';

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
    const printed = execFileSync('node', ['--import', 'tsx', 'src/main.ts', ...args], {
      encoding: 'utf8',
      stdio: ['ignore', 'pipe', 'pipe'],
    });
    expect(printed.trim().length).toBeGreaterThan(0);
    expect(printed).not.toMatch(/NaN|undefined/);
  });
});
