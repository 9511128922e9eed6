import type { FittedTest } from '../inference/fittedTests.ts';
import type { Block } from './report.ts';
import { capital, newtonMetres, percent, signedPercent } from './words.ts';

/** A test this far off its curve is worth a warning (working value). */
const farOff = 0.3;

/** Tests of the joints other than the knee beside their curves, and which are far off. */
export function testTable(tests: readonly FittedTest[]): Block[] {
  if (tests.length === 0) return [];
  const far = tests.filter((test) => Math.abs(difference(test)) > farOff);
  const table: Block = {
    kind: 'table',
    columns: [
      { head: 'tested', align: 'left' },
      { head: 'angle', align: 'right' },
      { head: 'measured', align: 'right' },
      { head: 'fitted curve', align: 'right' },
      { head: 'difference', align: 'right' },
    ],
    rows: tests.map((test) => [
      test.action,
      `${test.deg.toFixed(0)}°`,
      newtonMetres(test.measured),
      newtonMetres(test.fitted),
      signedPercent(difference(test)),
    ]),
  };
  return far.length === 0 ? [table] : [table, { kind: 'list', items: far.map(warning) }];
}

const difference = ({ measured, fitted }: FittedTest) => measured / fitted - 1;

function warning(test: FittedTest): string {
  const { action, deg, measured } = test;
  const way = difference(test) > 0 ? 'above' : 'below';
  return `${capital(action)} of ${newtonMetres(measured)} at ${deg.toFixed(0)}° lies ${percent(Math.abs(difference(test)))} ${way} the curve: check unit, angle and that it is of one side. The shape of the curve is that of the tables and does not follow a single test.`;
}
