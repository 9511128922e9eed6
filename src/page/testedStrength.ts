import type { StrengthFit } from '../inference/fitStrength.ts';
import type { Results } from '../run.ts';
import { chartFrame } from './chartFrame.ts';
import { findingItems } from './findingWords.ts';
import type { Block, Chart } from './report.ts';
import { strongest } from './strongestAngle.ts';
import { capital, newtonMetres, percent, signedPercent } from './words.ts';

/** Torque tests beside the curves fitted to them, and what to check or to test next. */
export function testedStrength(results: Results): Block[] {
  const { fits, question } = results;
  if (fits.length === 0) return [];
  const ofTarget = fits.find(({ action }) => action === question.action);
  const others = fits.filter((fit) => fit !== ofTarget);
  const items = fits.flatMap(findingItems);
  return [
    ...(ofTarget ? curveBlocks(ofTarget, results) : []),
    ...others.map((fit): Block => ({ kind: 'text', text: sizeSentence(fit) })),
    testTable(fits),
    ...(items.length > 0 ? [{ kind: 'list' as const, items }] : []),
  ];
}

/** The curve of the target's action with its band and tests, and what the chart shows. */
function curveBlocks(fit: StrengthFit, results: Results): Block[] {
  const landing = results.ranking[0]?.program.landing;
  const peak =
    fit.isShaped && landing ? `, ${strongest([landing.peakBefore, landing.levelBefore])}` : '';
  return [
    {
      kind: 'text',
      text: `The curve fitted to the tests of ${fit.action}: ${sizeOf(fit)}${peak}${shapeUnknown(fit)}. The chart shows it with the tests and a band that at each angle holds the true torque of 9 in 10 such athletes; the error of a test is taken as ${percent(fit.testError, fit.errorFrom === 'borrowed' ? 0 : 1)}, ${errorWords[fit.errorFrom]}. All tests count as one occasion.`,
    },
    { kind: 'chart', chart: bandChart(fit, results) },
  ];
}

/** Signs for the tests over the curve over the edges of its band. */
function bandChart(fit: StrengthFit, results: Results): Chart {
  const { shown, band } = chartFrame(results);
  // Each test stands between two angles without one, so that signs are not joined.
  const [first = 0, last = 0] = [shown[0]?.deg, shown.at(-1)?.deg];
  const inside = fit.measured.filter(({ deg }) => deg >= first && deg <= last);
  const tests = inside.flatMap(({ deg, torque }) => [
    { deg, torque, i: -1 },
    { deg, torque: Number.NaN, i: -1 },
  ]);
  const grid = shown.map(({ deg, i }) => ({ deg, torque: Number.NaN, i }));
  const all = [...grid, ...tests].sort((a, b) => a.deg - b.deg);
  return {
    title: `${capital(fit.action)} torque (N·m, one side)`,
    x: all.map(({ deg }) => deg),
    series: [
      { name: 'test', mark: 'o', y: all.map(({ torque }) => torque) },
      { name: 'fitted curve', mark: '*', y: over(fit.torque, all) },
      { name: 'edges of the 90 % band', mark: '-', y: over(fit.low, all) },
      { name: 'edges of the 90 % band', mark: '-', y: over(fit.high, all) },
    ],
    band,
  };
}

/** Values of the angle grid at mixed angles: between grid angles those of the one before. */
function over(values: readonly number[], all: readonly { readonly i: number }[]): number[] {
  let last = Number.NaN;
  return all.map(({ i }) => {
    if (i >= 0) last = values[i] ?? Number.NaN;
    return last;
  });
}

const errorWords = {
  own: 'from the file',
  borrowed: 'borrowed from studies of repeated tests',
  'own and borrowed': 'from own repeated days with a borrowed one behind them',
} as const;

const sizeOf = ({ strength }: StrengthFit) =>
  `${percent(strength.scale)} of the mean person of this size`;

const shapeUnknown = ({ isShaped }: StrengthFit) =>
  isShaped ? '' : ', its shape that of the mean person (fewer than three angles do not tell it)';

function sizeSentence(fit: StrengthFit): string {
  return `Tested ${fit.action}: ${sizeOf(fit)}${shapeUnknown(fit)}.`;
}

function testTable(fits: readonly StrengthFit[]): Block {
  return {
    kind: 'table',
    columns: [
      { head: 'tested', align: 'left' },
      { head: 'angle', align: 'right' },
      { head: 'measured', align: 'right' },
      { head: 'fitted curve', align: 'right' },
      { head: 'difference', align: 'right' },
    ],
    rows: fits.flatMap(({ action, measured, fitted }) =>
      measured.map(({ deg, torque }, i) => [
        action,
        `${deg.toFixed(0)}°`,
        newtonMetres(torque),
        newtonMetres(fitted[i] ?? torque),
        signedPercent(torque / (fitted[i] ?? torque) - 1),
      ]),
    ),
  };
}
