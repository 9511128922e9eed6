import { cellText, cellUnit } from '../notebook/formula/cellText.ts';
import type { Step } from '../questions/stepAt.ts';
import type { SweepOfTwo } from '../questions/sweepTwo.ts';
import { refusals } from './refusals.ts';
import type { Block, Report } from './report.ts';
import { lastWord, sweptAxis, withUnit } from './sweptAxis.ts';

/** A sweep of two places as a map, the first down and the second across. */
export function sweepOfTwoPage({ formula, rows, columns, steps }: SweepOfTwo): Report {
  const cells = cellsOf({ formula, rows, columns, steps });
  const answer = cells.find((cell) => cell.answer)?.answer;
  const unit = answer ? cellUnit(answer) : { text: '', size: 1 };
  const values = steps.map((row) =>
    row.map(({ answers: [one] }) => (one ? Number(one.value) / unit.size : undefined)),
  );
  const [down, across] = [rows, columns].map((axis) => sweptAxis(axis.values));
  const map = { rows: down?.labels ?? [], columns: across?.labels ?? [], values };
  const stands = `Down: ${withUnit(rows.place, down?.unit ?? '')}, in the file ${rows.written}. Across: ${withUnit(columns.place, across?.unit ?? '')}, in the file ${columns.written}. Everything else stays as it is.`;
  return {
    title: `${rows.place} and ${columns.place} varied`,
    sections: [
      {
        heading: withUnit(formula, unit.text),
        blocks: [
          { kind: 'text', text: stands },
          { kind: 'map', map },
          ...refusals(cells.map(({ step, refusedAt }) => ({ step, at: refusedAt }))),
          ...extremes(cells, formula),
        ],
      },
    ],
  };
}

interface Cell {
  readonly step: Step;
  readonly answer?: Step['answers'][number];
  /** "to = 80 deg, mass = 60 kg". */
  readonly at: string;
  /** The same; or only the value with which every other one is refused for the same reason. */
  readonly refusedAt: string;
}

function cellsOf({ rows, columns, steps }: SweepOfTwo): Cell[] {
  const isToldApart = lastWord(rows.place) !== lastWord(columns.place);
  const [down, across] = [rows.place, columns.place].map((place) =>
    isToldApart ? lastWord(place) : place,
  );
  return steps.flatMap((row, i) =>
    row.map((step, j) => {
      const [one, other] = [`${down} = ${rows.values[i]}`, `${across} = ${columns.values[j]}`];
      const isWhole = (line: readonly (Step | undefined)[]) =>
        line.every((beside) => beside?.says === step.says);
      const at = `${one}, ${other}`;
      const whole = isWhole(row) ? one : isWhole(steps.map((line) => line[j])) ? other : at;
      const [answer] = step.answers;
      return { step, at, refusedAt: whole, ...(answer ? { answer } : {}) };
    }),
  );
}

/** Where the formula is largest and smallest, to three digits; nothing if it has one answer at most. */
function extremes(cells: readonly Cell[], formula: string): Block[] {
  const known = cells.flatMap(({ at, answer }) => (answer ? [{ at, answer }] : []));
  const [first] = known;
  if (!first || known.length < 2) return [];
  const extreme = (sign: 1 | -1) => {
    const found = known.reduce((a, b) =>
      sign * Number(b.answer.value) > sign * Number(a.answer.value) ? b : a,
    );
    const text = cellText(found.answer);
    const alike = known.filter(({ answer }) => cellText(answer) === text).map(({ at }) => at);
    const where =
      alike.length > 3 ? `${alike.length} pairs, the first ${alike[0]}` : alike.join(' and ');
    return { text, where };
  };
  const [most, least] = [extreme(1), extreme(-1)];
  const text =
    most.text === least.text
      ? `${formula} does not change.`
      : `${formula} is largest at ${most.where} (${most.text}) and smallest at ${least.where} (${least.text}).`;
  return [{ kind: 'text', text }];
}
