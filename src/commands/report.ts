import { join } from 'node:path';
import { fullReport, shortReport } from '../page/fullReport.ts';
import { renderMarkdown } from '../page/markdown.ts';
import { jsonText, resultsJson } from '../page/resultsJson.ts';
import { renderTerminal } from '../page/terminal.ts';
import { evaluate } from './evaluate.ts';
import { read, readIfThere, reportName, writeWhole } from './files.ts';
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
    const path = join(options.out, reportName(scenario.file));
    const shown = options.full ? whole : shortReport(results);
    process.stdout.write(`${renderTerminal(shown, width())}\n`);
    if (writeWhole(options.out, path, renderMarkdown(whole)))
      process.stderr.write(`report: ${path}\n`);
  }
  if (data.length > 0) process.stdout.write(`${jsonText(data)}\n`);
}

/** Reports every problem, and reports that differ from what the files would give now. */
export async function check(files: readonly string[], options: { out: string }): Promise<void> {
  for (const scenario of read(files)) {
    const results = await evaluate(scenario, Number.POSITIVE_INFINITY);
    if (!results) continue;
    const path = join(options.out, reportName(scenario.file));
    const now = renderMarkdown(fullReport(results));
    const written = readIfThere(path);
    if (written === now) process.stdout.write(`${scenario.file}: fine, report matches\n`);
    else {
      process.exitCode = 1;
      const state = written === undefined ? 'has no report yet' : 'the report differs';
      const out = options.out === 'reports' ? '' : ` --out ${options.out}`;
      process.stdout.write(
        `${scenario.file}: the scenario is fine; ${state} (${path}); run: torqueleaf report ${scenario.file}${out}\n`,
      );
    }
  }
}
