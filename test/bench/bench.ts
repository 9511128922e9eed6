/**
 * Time of a scenario inside one process, and of whole runs of the bundled command as a ratio to a
 * bare `node -e 0`. Medians; machines are noisy, so read the ratios. Run: `npm run bench`.
 */
import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { run } from '../../src/run.ts';

const bundle = '.bundle/torqueleaf.cjs';
const rounds = 9;
const scenarios = readdirSync('scenarios').filter((name) => name.endsWith('.yaml'));

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? 0;
}

function milliseconds(work: () => void): number {
  const start = process.hrtime.bigint();
  work();
  return Number(process.hrtime.bigint() - start) / 1e6;
}

async function insideOneProcess(file: string): Promise<void> {
  const text = readFileSync(file, 'utf8');
  const times: number[] = [];
  for (let round = 0; round < rounds; round++) {
    const start = process.hrtime.bigint();
    await run(file, text);
    times.push(Number(process.hrtime.bigint() - start) / 1e6);
  }
  const [first = 0] = times;
  console.log(
    `${file}: first ${first.toFixed(0)} ms, then ${median(times.slice(1)).toFixed(0)} ms`,
  );
}

/** The first four programs of a scenario, as a file of its own. */
function fourPrograms(folder: string): string {
  const text = readFileSync('scenarios/ski-deep-range.yaml', 'utf8');
  const [head = '', programs = ''] = text.split('programs:\n');
  const four = programs.split(/^(?= {2}\S)/m).slice(0, 4);
  const path = join(folder, 'four.yaml');
  writeFileSync(path, `${head}programs:\n${four.join('')}`);
  return path;
}

function wholeRuns(): void {
  const out = mkdtempSync(join(tmpdir(), 'torqueleaf-bench-'));
  const calls: Readonly<Record<string, readonly string[]>> = {
    'node -e 0': ['-e', '0'],
    '--help (to stay within 3 × bare start)': [bundle, '--help'],
    'report of four programs (to stay within 1 s)': [
      bundle,
      'report',
      fourPrograms(out),
      '--out',
      out,
    ],
    ...Object.fromEntries(
      scenarios.map((name) => [
        `report ${name}`,
        [bundle, 'report', join('scenarios', name), '--out', out],
      ]),
    ),
  };
  const times = new Map<string, number[]>();
  // In turn, so that a slow moment of the machine falls on all of them.
  for (let round = 0; round < rounds; round++)
    for (const [name, args] of Object.entries(calls)) {
      const spent = milliseconds(() => spawnSync('node', args));
      times.set(name, [...(times.get(name) ?? []), spent]);
    }
  rmSync(out, { recursive: true });
  const bare = median(times.get('node -e 0') ?? []);
  for (const [name, spent] of times)
    console.log(
      `${name}: ${median(spent).toFixed(0)} ms, ${(median(spent) / bare).toFixed(1)} × bare start`,
    );
}

for (const name of scenarios) await insideOneProcess(join('scenarios', name));
if (existsSync(bundle)) wholeRuns();
else console.log(`no ${bundle}: run npm run bundle first`);
