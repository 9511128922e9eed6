/**
 * Runs every hostile scenario in a process of its own and prints a line of JSON before and after each, so that
 * whoever started it sees which one hung, ran out of memory or ended the process.
 */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { besideOnDisk } from '../src/commands/besideOnDisk.ts';
import { loadParser } from '../src/notebook/formula/mathjsParser.ts';
import { formatProblems } from '../src/notebook/text/problem.ts';
import { readWithIncludes } from '../src/notebook/text/readWithIncludes.ts';
import { fullReport } from '../src/page/fullReport.ts';
import { renderMarkdown } from '../src/page/markdown.ts';
import { jsonText, resultsJson } from '../src/page/resultsJson.ts';
import { renderTerminal } from '../src/page/terminal.ts';
import { runSource } from '../src/run.ts';
import { hostileFolder } from './hostile/includes.ts';
import { hostileScenarios } from './hostile/scenarios.ts';

const folder = mkdtempSync(join(tmpdir(), 'torqueleaf-'));
const path = hostileFolder(folder);
const file = 'hostile.yaml';

/** Time of the processor: it does not depend on what else the machine does. */
function milliseconds(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}

const members = Object.getOwnPropertyNames(Object.prototype).length;

async function outcome(text: string) {
  const { source, texts, problems: unread = [] } = readWithIncludes(file, text, besideOnDisk(path));
  const {
    results,
    problems,
    notes = [],
    broken = [],
  } = { notes: [], broken: [], ...(source ? await runSource(source) : { problems: unread }) };
  const ran = milliseconds();
  const said = formatProblems(problems ?? [...broken, ...notes], (name) => texts.get(name));
  if (!results) return { ran, said, problems: problems ?? [], pages: [] };
  const report = fullReport(results);
  const json = jsonText(resultsJson(results));
  return {
    ran,
    said,
    problems: [],
    pages: [renderTerminal(report, 80), renderMarkdown(report), json],
  };
}

async function main(): Promise<void> {
  // Loaded once in a process by whichever file has the first formula: no doing of that file's own.
  await loadParser();
  const only = process.argv.slice(2);
  for (const { name, text } of hostileScenarios) {
    if (only.length > 0 && !only.includes(name)) continue;
    process.stdout.write(`${JSON.stringify({ starts: name })}\n`);
    const written = text();
    const start = milliseconds();
    let line: object;
    try {
      const { ran, said, problems, pages } = await outcome(written);
      line = {
        milliseconds: ran - start,
        shownIn: milliseconds() - ran,
        said,
        problems: problems.length,
        located: problems.every(({ at }) => at && at.line >= 1 && at.col >= 1),
        pages: problems.length > 0 ? undefined : pages,
      };
    } catch (error) {
      line = { thrown: error instanceof Error ? String(error.stack) : String(error) };
    }
    const polluted = Object.getOwnPropertyNames(Object.prototype).length !== members;
    const megabytes = process.memoryUsage().rss / 1e6;
    process.stdout.write(`${JSON.stringify({ ends: name, ...line, polluted, megabytes })}\n`);
  }
}

void main().finally(() => rmSync(folder, { recursive: true }));
