import { join } from 'node:path';
import { fullReport, shortReport } from '../page/fullReport.ts';
import { renderMarkdown } from '../page/markdown.ts';
import { jsonText, resultsJson } from '../page/resultsJson.ts';
import { retestPage } from '../page/retestPage.ts';
import { renderTerminal } from '../page/terminal.ts';
import { judgeRetests } from '../questions/retest/judgeRetests.ts';
import type { Results } from '../run.ts';
import { evaluate } from './evaluate.ts';
import { read, readIfThere, reportName, retestName, writeWhole } from './files.ts';
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
    for (const { name, text } of pagesOf(scenario.file, results, whole)) {
      const path = join(options.out, name);
      if (writeWhole(options.out, path, text)) process.stderr.write(`report: ${path}\n`);
    }
  }
  if (data.length > 0) process.stdout.write(`${jsonText(data)}\n`);
}

/** The reports of one scenario by file name: its own, and one on its retests if it has any. */
function pagesOf(file: string, results: Results, whole = fullReport(results)) {
  const pages = [{ name: reportName(file), text: renderMarkdown(whole) }];
  if (results.scenario.retests.length > 0) {
    const page = retestPage(results, judgeRetests(results));
    pages.push({ name: retestName(file), text: renderMarkdown(page) });
  }
  return pages;
}

/** Reports every problem, and reports that differ from what the files would give now. */
export async function check(files: readonly string[], options: { out: string }): Promise<void> {
  for (const scenario of read(files)) {
    const results = await evaluate(scenario, Number.POSITIVE_INFINITY);
    if (!results) continue;
    const pages = pagesOf(scenario.file, results).map(({ name, text }) => {
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
