import { cellText, cellUnit } from '../notebook/formula/cellText.ts';
import type { Sweep, SweptStep } from '../questions/sweep.ts';
import { refusals } from './refusals.ts';
import type { Block, Report } from './report.ts';
import { lastWord, sweptAxis, withUnit } from './sweptAxis.ts';
import { listInWords } from './words.ts';

/** Most curves over angles in one chart: more cannot be told apart. */
const mostCurves = 7;

/** A sweep as a table, one row a value, and a chart of the first formula. */
export function sweepPage(sweep: Sweep): Report {
  const { place, written, formulas, steps } = sweep;
  const blocks = [
    sweepTable(sweep),
    ...refusals(steps.map((step) => ({ at: step.value, step }))),
    ...shortAt(steps),
    ...bestOf(steps, formulas),
    ...chartOf(sweep),
  ];
  const title = `${place} varied`;
  const stands = `In the file: ${written}. Everything else stays as it is.`;
  return {
    title,
    sections: [{ heading: 'Values', blocks: [{ kind: 'text', text: stands }, ...blocks] }],
  };
}

function sweepTable({ place, written, formulas, steps }: Sweep): Block {
  return {
    kind: 'table',
    columns: [
      { head: lastWord(place), align: 'left' },
      ...formulas.map((head) => ({ head, align: 'right' }) as const),
    ],
    rows: steps.map(({ value, answers, says }) => [
      value === written ? `${value} (as written)` : value,
      ...(says === undefined ? answers.map(cellText) : formulas.map(() => '-')),
    ]),
  };
}

/** Values with which a program cannot be done as written, where it can be with others. */
function shortAt(steps: Sweep['steps']): Block[] {
  const names = [...new Set(steps.flatMap(({ short = [] }) => short))];
  const items = names.flatMap((name) => {
    const at = steps.filter(({ short }) => short?.includes(name)).map(({ value }) => value);
    const told = steps.filter(({ short }) => short !== undefined).length;
    return at.length === told
      ? []
      : [
          `With ${listInWords(at)} "${name}" cannot be done as written; its gain is that of what can be done.`,
        ];
  });
  return items.length > 0 ? [{ kind: 'list', items }] : [];
}

/** Where the first formula is largest and smallest; nothing for texts and lists. */
function bestOf(steps: Sweep['steps'], [formula = '']: readonly string[]): Block[] {
  const numbers = steps.flatMap(({ value, answers: [answer] }) =>
    answer && typeof answer.value === 'number' ? [{ value, answer, y: answer.value }] : [],
  );
  if (numbers.length < 2) return [];
  const most = numbers.reduce((a, b) => (b.y > a.y ? b : a));
  const least = numbers.reduce((a, b) => (b.y < a.y ? b : a));
  const said =
    most.y === least.y
      ? `${formula} does not change.`
      : `${formula} is largest at ${most.value} (${cellText(most.answer)}) and smallest at ${least.value} (${cellText(least.answer)}).`;
  return [{ kind: 'text', text: said }];
}

/** The first formula drawn over the values, or over angles if it gives lists. */
function chartOf(sweep: Sweep): Block[] {
  const first = sweep.steps.flatMap(({ answers: [answer] }) => (answer ? [answer] : []));
  if (first.length < 2) return [];
  if (first.every(({ value }) => typeof value === 'number')) return chartOfNumbers(sweep);
  return first.every(({ value }) => typeof value === 'object') ? chartOfLists(sweep) : [];
}

/** A curve over the values, if they are numbers in one unit; a gap where there is no answer. */
function chartOfNumbers({ place, formulas: [formula = ''], steps }: Sweep): Block[] {
  const { unit, numbers } = sweptAxis(steps.map(({ value }) => value));
  if (!numbers || new Set(numbers).size < 2) return [];
  const y = steps.map(({ answers: [answer] }) => shownNumber(answer));
  const chart = {
    title: titled(formula, steps),
    x: numbers,
    axis: withUnit(lastWord(place), unit),
  };
  return [{ kind: 'chart', chart: { ...chart, series: [{ name: formula, y }] } }];
}

type Answer = SweptStep['answers'][number];

const shownNumber = (answer: Answer | undefined) =>
  answer && typeof answer.value === 'number' ? answer.value / cellUnit(answer).size : Number.NaN;

/** The formula with the unit that its answers are shown in. */
function titled(formula: string, steps: Sweep['steps']): string {
  const [answer] = steps.flatMap(({ answers }) => answers);
  return withUnit(formula, answer ? cellUnit(answer).text : '');
}

/** A curve over angles for each value, for at most seven of them evenly chosen. */
function chartOfLists({ formulas: [formula = ''], steps }: Sweep): Block[] {
  const curves = steps.flatMap(({ value, answers: [answer], over }) =>
    answer && typeof answer.value === 'object' && answer.value.length === over?.deg.length
      ? [{ value, answer, list: answer.value, over }]
      : [],
  );
  const text = `${formula} is not drawn: only lists over all angles of the target’s action have an axis.`;
  if (curves.length < 2) return [{ kind: 'text', text }];
  const count = Math.min(mostCurves, curves.length);
  const places = Array.from({ length: count }, (_, i) =>
    Math.round((i * (curves.length - 1)) / (count - 1)),
  );
  const drawn = curves.filter((_, i) => places.includes(i));
  const left = curves.filter((curve) => !drawn.includes(curve)).map(({ value }) => value);
  // A limit that is varied changes which angles there are.
  const x = [...new Set(drawn.flatMap(({ over }) => over.deg))].sort((a, b) => a - b);
  const series = drawn.map(({ value, answer, list, over }) => ({
    name: value,
    y: x.map((deg) => (list[over.deg.indexOf(deg)] ?? Number.NaN) / cellUnit(answer).size),
  }));
  return [
    ...leftOut(left, curves.length),
    { kind: 'chart', chart: { title: titled(formula, steps), x, series, ...bandOf(drawn) } },
  ];
}

/** Which values have no curve of their own. */
function leftOut(values: readonly string[], count: number): Block[] {
  if (values.length === 0) return [];
  const said = `Drawn for ${count - values.length} of the ${count} values; left out of the chart: ${listInWords(values)}.`;
  return [{ kind: 'text', text: said }];
}

/** The target, unless it is what varies. */
function bandOf(curves: readonly Pick<SweptStep, 'over'>[]) {
  const [[fromDeg, toDeg] = []] = curves.map(({ over }) => over?.targetDeg ?? []);
  const isOne = curves.every(
    ({ over }) => over?.targetDeg[0] === fromDeg && over?.targetDeg[1] === toDeg,
  );
  return isOne && fromDeg !== undefined && toDeg !== undefined
    ? { band: { fromDeg, toDeg, name: 'target' } }
    : {};
}
