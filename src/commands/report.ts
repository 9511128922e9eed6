import { join } from 'node:path';
import { fullReport, shortReport } from '../page/fullReport.ts';
import { jsonText, resultsJson } from '../page/resultsJson.ts';
import { renderTerminal } from '../page/terminal.ts';
import { evaluate } from './evaluate.ts';
import { read, readIfThere, writeWhole } from './files.ts';
import { reportsOf } from './reportsOf.ts';
import { width } from './width.ts';

/** Evaluates each file; a file with problems gets no report, and the exit code says so. */
export async function report(
  files: readonly string[],
  options: { out: string; full?: true; json?: true },
): Promise<void> {
  const data: object[] = [];
  for (const scenario of read(files)) {
    const results = await evaluate(scenario);
    if (!results) continue;
    if (options.json) {
      data.push(resultsJson(results));
      continue;
    }
    const whole = fullReport(results);
    const shown = options.full ? whole : shortReport(results);
    process.stdout.write(`${renderTerminal(shown, width())}\n`);
    for (const { name, text } of reportsOf(scenario.file, results, whole)) {
      const path = join(options.out, name);
      if (writeWhole(options.out, path, text)) process.stderr.write(`report: ${path}\n`);
    }
  }
  if (data.length > 0) process.stdout.write(`${jsonText(data)}\n`);
}

/** Reports every problem, and reports that differ from what the files would give now. */
export async function check(files: readonly string[], options: { out: string }): Promise<void> {
  for (const scenario of read(files)) {
    const results = await evaluate(scenario, Number.POSITIVE_INFINITY);
    if (!results) continue;
    const pages = reportsOf(scenario.file, results).map(({ name, text }) => {
      const path = join(options.out, name);
      return { path, text, written: readIfThere(path) };
    });
    const wrong = pages.find(({ text, written }) => text !== written);
    if (!wrong) process.stdout.write(`${scenario.file}: fine, report matches\n`);
    else {
      process.exitCode = 1;
      const { path, written } = wrong;
      const state = written === undefined ? 'has no report yet' : 'the report differs';
      const out = options.out === 'reports' ? '' : ` --out ${options.out}`;
      process.stdout.write(
        `${scenario.file}: the scenario is fine; ${state} (${path}); run: torqueleaf report ${scenario.file}${out}\n`,
      );
    }
  }
}
