import { fullReport } from '../page/fullReport.ts';
import { renderMarkdown } from '../page/markdown.ts';
import { retestPage } from '../page/retestPage.ts';
import { judgeRetests } from '../questions/retest/judgeRetests.ts';
import type { Results } from '../run.ts';
import { reportName, retestName } from './files.ts';

/** The reports of one scenario by file name: its own, and one on its retests if it has any. */
export function reportsOf(file: string, results: Results, whole = fullReport(results)) {
  const pages = [{ name: reportName(file), text: renderMarkdown(whole) }];
  if (results.scenario.retests.length > 0) {
    const page = retestPage(results, judgeRetests(results));
    pages.push({ name: retestName(file), text: renderMarkdown(page) });
  }
  return pages;
}
