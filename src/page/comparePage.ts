import { cellText } from '../notebook/formula/cellText.ts';
import type { CellResult } from '../notebook/formula/evaluateCells.ts';
import type { Difference, Said } from '../notebook/text/differences.ts';
import type { Pair } from '../questions/changes.ts';
import type { Compared } from '../questions/compare.ts';
import { causeText } from './causeText.ts';
import type { Block, Report } from './report.ts';
import { signedPercent, signedPoints } from './words.ts';

const notThere = 'not there';

/** Two scenarios side by side: the answers, the first cause of a change, and where the files differ. */
export function comparePage(compared: Compared): Report {
  const { a, b, programs, cells, differences } = compared;
  return {
    title: 'Two scenarios compared',
    sections: [
      {
        heading: 'What changed in the answer',
        blocks: [
          { kind: 'text', text: `a is ${a.file}; b is ${b.file}.` },
          { kind: 'text', text: answerSentence(compared) },
          programTable(programs),
          ...(cells.length > 0 ? [cellTable(cells)] : []),
        ],
      },
      { heading: 'First cause', blocks: [{ kind: 'text', text: causeOf(compared) }] },
      { heading: 'What differs in the files', blocks: [differenceBlock(differences)] },
    ],
  };
}

/** Which program is best in each, and how far target gains moved. */
function answerSentence({ a, b, programs }: Compared): string {
  const others = programs.filter(({ name }) => a.program !== b.program || name !== a.program);
  const moves = movesText(others, a.program !== b.program);
  if (a.program !== b.program) {
    const tie = b.ties.includes(a.program) ? `, which b cannot tell apart from "${a.program}"` : '';
    return `The best program is "${a.program}" in a (${signedPercent(a.gain)}) and "${b.program}" in b (${signedPercent(b.gain)})${tie}${moves}.`;
  }
  const change = signedPoints(b.gain - a.gain);
  const own =
    change === '0'
      ? `its target gain stays at ${signedPercent(b.gain)}`
      : `its target gain goes from ${signedPercent(a.gain)} to ${signedPercent(b.gain)} (${change} points)`;
  return `"${a.program}" is the best program in both; ${own}${moves}.`;
}

/** How far the gains of programs in both moved, as the end of a sentence. */
function movesText(programs: readonly Pair<number>[], isAll: boolean): string {
  const moves = programs.flatMap(({ a, b }) => (a === undefined || b === undefined ? [] : [b - a]));
  if (moves.length === 0) return '';
  const which = isAll ? 'target gains' : 'other target gains';
  const [least, most] = [Math.min(...moves), Math.max(...moves)].map(signedPoints);
  if (least === '0' && most === '0') return `; ${which} stay as they are`;
  const span = least === most ? `${least}` : `${least} to ${most}`;
  return `; ${which} move by ${span} points`;
}

function programTable(programs: readonly Pair<number>[]): Block {
  return {
    kind: 'table',
    columns: [
      { head: 'program', align: 'left' },
      { head: 'gain in a', align: 'right' },
      { head: 'gain in b', align: 'right' },
      { head: 'points', align: 'right' },
    ],
    rows: programs.map(({ name, a, b }) => [
      name,
      a === undefined ? notThere : signedPercent(a),
      b === undefined ? notThere : signedPercent(b),
      a === undefined || b === undefined ? '' : signedPoints(b - a),
    ]),
  };
}

function cellTable(cells: readonly Pair<CellResult>[]): Block {
  return {
    kind: 'table',
    columns: [
      { head: 'cell', align: 'left' },
      { head: 'in a', align: 'right' },
      { head: 'in b', align: 'right' },
    ],
    rows: cells.map(({ name, a, b }) => [
      name,
      a ? cellText(a) : notThere,
      b ? cellText(b) : notThere,
    ]),
  };
}

function causeOf({ programs, cells, differences, cause }: Compared): string {
  if (cause) return causeText(cause, differences.length);
  const isOneSided = [...programs, ...cells].some(({ a, b }) => a === undefined || b === undefined);
  return isOneSided
    ? 'What both files have comes to the same in both: they differ in what only one of them has.'
    : 'Nothing that counts differs: every target gain and every cell comes to the same, as far as it is shown.';
}

function differenceBlock(differences: readonly Difference[]): Block {
  return differences.length === 0
    ? { kind: 'text', text: 'No value; layout, comments and the order of names are not compared.' }
    : {
        kind: 'list',
        items: differences.map(
          ({ place, a, b }) =>
            `${place || 'the whole file'}: ${located('a', a)}; ${located('b', b)}`,
        ),
      };
}

function located(name: string, side?: Said): string {
  if (!side) return `${notThere} (${name})`;
  const where = side.file === undefined ? '' : ` of ${side.file}`;
  return `${side.text} (${name}, line ${side.line}${where})`;
}
