/** A report as a markdown document. */

import { drawChart } from './chart.ts';
import { escapeInline, escapeLine } from './escape.ts';
import { drawHeatMap } from './heatMap.ts';
import type { Block, Report } from './report.ts';
import { markdownTable } from './table.ts';
import { paragraphs, plainLines } from './wrap.ts';

// Two columns short of 80, so that the fence can be quoted in a thread and still fit.
const chartWidth = 78;

function blockLines(block: Block): string[] {
  switch (block.kind) {
    case 'text':
      return paragraphs(block.text).flatMap((paragraph, index) =>
        index === 0 ? [escapeLine(paragraph)] : ['', escapeLine(paragraph)],
      );
    case 'markdown':
      return plainLines(block.text);
    case 'list':
      return block.items.map((item) => `- ${escapeLine(item)}`.trimEnd());
    case 'table':
      return markdownTable(block);
    case 'chart':
      return fenced(drawChart(block.chart, chartWidth));
    case 'map':
      return fenced(drawHeatMap(block.map, chartWidth));
  }
}

/** Longer than any row of backticks inside: a name in a legend cannot close it. */
function fenced(lines: readonly string[]): string[] {
  const runs = lines.flatMap((line) => line.match(/`{3,}/g) ?? []);
  const fence = '`'.repeat(Math.max(3, ...runs.map(({ length }) => length + 1)));
  return [`${fence}text`, ...lines, fence];
}

function headed(marks: string, text: string): string {
  const escaped = escapeInline(text);
  return escaped === '' ? '' : `${marks} ${escaped}`;
}

/**
 * A report as GitHub-flavoured markdown: one paragraph a line, charts in text fences of 78
 * columns, a final newline. Texts are plain: marks of markdown in them are shown, not
 * obeyed, but for blocks of markdown.
 */
export function renderMarkdown(report: Report): string {
  const parts = [headed('#', report.title)];
  for (const { heading, blocks } of report.sections) {
    parts.push(headed('##', heading));
    for (const block of blocks) parts.push(blockLines(block).join('\n'));
  }
  return `${parts.filter((part) => part !== '').join('\n\n')}\n`;
}
