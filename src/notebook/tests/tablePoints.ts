import { isAbove } from '../reading.ts';
import type { Path } from '../scenario.ts';
import type { ReadMeasure } from './readMeasure.ts';
import { readTrial } from './readPoints.ts';
import type { TrialLine, TrialLines } from './readTrialTable.ts';
import type { TorquePoint } from './strengthTest.ts';

/** What is tested, and how its numbers are read. */
export interface Tested {
  readonly joint: string;
  readonly measured: ReadMeasure | undefined;
}

/**
 * Puts the trials of a table's lines together by angle.
 *
 * @param lines of one person and day
 * @param path of the test that names the table
 * @returns the points by rising angle; problems are collected at their line, never thrown
 */
export function tablePoints(
  { table }: TrialLines,
  lines: readonly TrialLine[],
  { measured }: Tested,
  path: Path,
): readonly TorquePoint[] {
  const sorted = [...lines].sort((a, b) => a.angle - b.angle);
  const groups: TrialLine[][] = [];
  for (const line of sorted) {
    const last = groups.at(-1);
    const first = last?.[0];
    if (first && !isAbove(line.angle - first.angle, 0)) last.push(line);
    else groups.push([line]);
  }
  return groups.map((group) => {
    refuseTwice({ table }, group);
    const trials = group.flatMap((line) =>
      line.trials.flatMap(({ value, path: cell }) =>
        measured ? readTrial(table, measured.torqueOf(value), cell) : [],
      ),
    );
    return { angle: group[0]?.angle ?? 0, trials, path: [...path, 'trials from'] };
  });
}

/** A trial that a table holds twice would count twice. */
function refuseTwice({ table }: Pick<TrialLines, 'table'>, group: readonly TrialLine[]): void {
  const seen = new Set<string>();
  for (const { trial, path } of group) {
    if (trial === undefined) continue;
    if (seen.has(trial)) {
      const message = `trial ${trial} of this angle stands in the table twice`;
      const hint = 'delete one line; or name the columns of person and day, or choose with where:';
      table.refuse(path, { code: 'duplicate-trial', message, hint });
    }
    seen.add(trial);
  }
}
