import { formatProblems } from '../../src/notebook/text/problem.ts';
import { fullReport } from '../../src/page/fullReport.ts';
import type { Block } from '../../src/page/report.ts';
import { type Results, run } from '../../src/run.ts';

/** From a scenario in a few words to the texts of its report; invented person and programs. */
export interface Asked {
  readonly years?: number;
  readonly tests?: string;
  readonly target?: string;
  /** The work of each program by its name. */
  readonly programs: Readonly<Record<string, string>>;
  /** Further lines of every program. */
  readonly more?: string;
}

export function scenarioOf({ years = 4, tests = '', target, programs, more = '' }: Asked): string {
  const written = Object.entries(programs).map(
    ([name, work]) =>
      `  ${name}:\n    weeks: 6\n    sessions per week: 2\n${more}    work:\n      - { ${work} }\n`,
  );
  return `title: Words
angles: flexion
group: { name: mean man, reference: male, stature: 178 cm, mass: 78 kg, training: ${years} years }
${tests}target: { ${target ?? 'action: knee extension, from: 60 deg, to: 100 deg'} }
programs:
${written.join('')}`;
}

export async function resultsOf(text: string): Promise<Results> {
  const { results, problems } = { results: undefined, ...(await run('words.yaml', text)) };
  if (!results) throw new Error(formatProblems(problems ?? [], () => text));
  return results;
}

/** Blocks under the first heading that holds some words. */
export function blocksUnder(results: Results, heading: string): readonly Block[] {
  const { sections } = fullReport(results);
  return sections.find((section) => section.heading.includes(heading))?.blocks ?? [];
}

/** All running texts and list items under a heading. */
export function textsUnder(results: Results, heading: string): string[] {
  return blocksUnder(results, heading).flatMap((block) => {
    if (block.kind === 'text') return [block.text];
    return block.kind === 'list' ? block.items : [];
  });
}

export async function reportTexts(asked: Asked, heading: string): Promise<string[]> {
  return textsUnder(await resultsOf(scenarioOf(asked)), heading);
}

/** Cells of the first table under a heading. */
export function tableUnder(results: Results, heading: string): readonly (readonly string[])[] {
  const table = blocksUnder(results, heading).find(({ kind }) => kind === 'table');
  return table?.kind === 'table' ? [table.columns.map(({ head }) => head), ...table.rows] : [];
}
