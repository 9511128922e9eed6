import { join } from 'node:path';
import { renderMarkdown } from '../page/markdown.ts';
import { repeatsPage } from '../page/repeatsPage.ts';
import { retestChat } from '../page/retestChat.ts';
import { retestPage } from '../page/retestPage.ts';
import { renderTerminal } from '../page/terminal.ts';
import { judgeRepeats } from '../questions/retest/judgeRepeats.ts';
import { judgeRetests } from '../questions/retest/judgeRetests.ts';
import { evaluate } from './evaluate.ts';
import { read, retestName, writeWhole } from './files.ts';
import { printableLines } from './printable.ts';
import { refuse } from './refuse.ts';
import { width } from './width.ts';

/** Prints how repeatable the tests of a scenario are. */
export async function repeatability(file: string): Promise<void> {
  const [scenario] = read([file]);
  const results = scenario && (await evaluate(scenario));
  if (!results) return;
  const judged = judgeRepeats(results);
  if (judged.length === 0)
    refuse(`${file} has no repeated test days; write them under repeatability: (see README)`);
  else process.stdout.write(`${renderTerminal(repeatsPage(results, judged), width())}\n`);
}

/** Prints the verdicts on the retests of a scenario and writes them as markdown, or prints them for a chat. */
export async function retest(file: string, options: { out: string; chat?: true }): Promise<void> {
  const [scenario] = read([file]);
  const results = scenario && (await evaluate(scenario));
  if (!results) return;
  if (results.scenario.retests.length === 0) {
    refuse(`${file} has no retests; write them under retests: (see README)`);
    return;
  }
  const judged = judgeRetests(results);
  if (options.chat) {
    process.stdout.write(`${retestChat(results, judged).map(printableLines).join('\n\n')}\n`);
    return;
  }
  const page = retestPage(results, judged);
  process.stdout.write(`${renderTerminal(page, width())}\n`);
  const path = join(options.out, retestName(file));
  if (writeWhole(options.out, path, renderMarkdown(page)))
    process.stderr.write(`report: ${path}\n`);
}
