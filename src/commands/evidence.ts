import { join } from 'node:path';
import { evidencePage } from '../page/evidencePage.ts';
import { renderMarkdown } from '../page/markdown.ts';
import { renderTerminal } from '../page/terminal.ts';
import { writeWhole } from './files.ts';
import { width } from './width.ts';

/** Prints how the model does on published studies, and writes it beside the reports. */
export function showEvidence(options: { out: string }): void {
  const report = evidencePage();
  process.stdout.write(`${renderTerminal(report, width())}\n`);
  const path = join(options.out, 'evidence.md');
  if (writeWhole(options.out, path, renderMarkdown(report)))
    process.stderr.write(`report: ${path}\n`);
}
