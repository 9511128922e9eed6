/** A report as text for a terminal. */

import { drawChart } from './chart.ts';
import { drawHeatMap } from './heatMap.ts';
import { proseLines } from './prose.ts';
import type { Block, Report } from './report.ts';
import { terminalTable } from './table.ts';
import { displayWidth, paragraphs, wrapWords } from './wrap.ts';

// On a very wide terminal a wider chart only gets flatter.
const widestChart = 100;

function underlined(text: string, width: number, stroke: string): string {
  const lines = wrapWords(text, width);
  return [...lines, stroke.repeat(Math.max(...lines.map(displayWidth)))].join('\n');
}

function blockLines(block: Block, width: number): string[] {
  switch (block.kind) {
    case 'text':
      return paragraphs(block.text).flatMap((paragraph, index) =>
        index === 0 ? wrapWords(paragraph, width) : ['', ...wrapWords(paragraph, width)],
      );
    case 'markdown':
      return proseLines(block.text, width);
    case 'list':
      return block.items.flatMap((item) => wrapWords(item, width, '- ', '  '));
    case 'table':
      return terminalTable(block, width);
    case 'chart':
      return drawChart(block.chart, Math.min(width, widestChart));
    case 'map':
      return drawHeatMap(block.map, width);
  }
}

/**
 * A report as plain text of at most `width` columns: title and headings underlined, text wrapped
 * between words, list items hanging, wide tables record by record. Never coloured.
 */
export function renderTerminal(report: Report, width: number): string {
  const parts = [underlined(report.title, width, '=')];
  for (const { heading, blocks } of report.sections) {
    parts.push(underlined(heading, width, '-'));
    for (const block of blocks) parts.push(blockLines(block, width).join('\n'));
  }
  return `${parts.filter((part) => part.trim() !== '').join('\n\n')}\n`;
}
