/**
 * Fits the adaptation model to the study files, predicts each study from the others, and writes
 * `src/tables/fittedCoefficients.ts` and `src/tables/evidence.json`. Run: `npm run calibrate`
 * (minutes); then regenerate the reports. Starts from the priors, so that the bytes depend on the
 * code and the study files only. `src/stages/study/calibrate.ts` says how.
 */
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { fitCalibration } from '../../src/inference/calibration/fitCalibration.ts';
import { leaveOneOut, refitWithout } from '../../src/inference/calibration/leaveOneOut.ts';
import {
  type Calibration,
  calibrate,
  coefficientsFrom,
  predictorOf,
} from '../../src/stages/study/calibrate.ts';
import { evidenceOf } from '../../src/stages/study/evidenceOf.ts';
import { studyCase } from '../../src/stages/study/studyCase.ts';
import { priorCoefficients } from '../../src/tables/adaptation.ts';
import { coefficientNames } from '../../src/tables/adaptationPriors.ts';

const folder = 'scenarios/studies';
const files = readdirSync(folder)
  .filter((name) => name.endsWith('.yaml'))
  .sort();
const began = process.cpuUsage();
const say = (what: string) => {
  const { user, system } = process.cpuUsage(began);
  process.stderr.write(`${what} (${((user + system) / 1e6).toFixed(0)} s of processor time)\n`);
};

const cases = await Promise.all(
  files.map((name) => studyCase(name, readFileSync(`${folder}/${name}`, 'utf8'))),
);
say(`${cases.length} studies read`);
const calibration = calibrate(cases, priorCoefficients, 3);
const { fit, problem, rows } = calibration;
say(`${rows.length} findings fitted, cost ${fit.cost.toFixed(1)}, settled: ${fit.settled}`);
writeFileSync('src/tables/fittedCoefficients.ts', fittedText(calibration));
const left = leaveOneOut(problem, fit, 2);
say('each study predicted from the others');
const evidence = evidenceOf(calibration, left);
writeFileSync('src/tables/evidence.json', `${JSON.stringify(evidence, null, 1)}\n`);
say('evidence written');
for (const name of ['valamatos-2018', 'kubo-2019']) say(`${name}: ${againstFullRefit(name)}`);

/** Largest difference, in standard errors, between the short way to a left-out fit and a full one. */
function againstFullRefit(name: string): string {
  const study = cases.findIndex((one) => one.name === name);
  const others = rows.filter((row) => row.study !== study);
  const predict = predictorOf(calibration.studies, others);
  const full = fitCalibration({ ...problem, rows: others, predict }, fit, 6);
  const short = refitWithout(problem, fit, study, 2);
  const away = full.logs.map(
    (log, j) => Math.abs(log - (short.logs[j] ?? 0)) / Math.sqrt(fit.covariance[j]?.[j] ?? 1),
  );
  const worst = away.indexOf(Math.max(...away));
  return `steps end within ${Math.max(...away).toFixed(2)} standard errors of a full refit (${coefficientNames[worst]})`;
}

function fittedText({ fit, rows, studies }: Calibration): string {
  const values = coefficientsFrom(fit.logs);
  const error = (j: number) => Math.sqrt(fit.covariance[j]?.[j] ?? 0);
  const lines = coefficientNames.map(
    (name, j) =>
      `  ${name}: { value: ${Number(values[name].toPrecision(4))}, logError: ${Number(error(j).toFixed(3))} },`,
  );
  const correlations = coefficientNames.map((_, j) => {
    const row = coefficientNames.slice(0, j + 1).map((__, k) => {
      const correlation = (fit.covariance[j]?.[k] ?? 0) / (error(j) * error(k));
      return String(Number(correlation.toFixed(3)));
    });
    return `  '${row.join(' ')}',`;
  });
  return [
    '/**',
    ' * Written by `npm run calibrate`; not to be changed by hand.',
    ' *',
    ` * Fitted to ${rows.length} findings of ${new Set(rows.map(({ study }) => study)).size} of the ${studies.length} studies in scenarios/studies: every finding that is`,
    ' * for the fit and that the model predicts; those told only by a direction have working values.',
    ' * `logError` is the standard error of the natural logarithm, priors of `adaptationPriors.ts` included.',
    ' */',
    `export const fittedFrom = { findings: ${rows.length}, studies: ${new Set(rows.map(({ study }) => study)).size} } as const;`,
    '',
    '/** Values and the errors of their logarithms. */',
    'export const fittedCoefficients = {',
    ...lines,
    '} as const;',
    '',
    '/** Correlations of the logarithms: lower triangle by rows, in the order above. */',
    'export const fittedCorrelations: readonly string[] = [',
    ...correlations,
    '];',
    '',
  ].join('\n');
}
