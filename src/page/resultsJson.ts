import { cellText } from '../notebook/formula/cellText.ts';
import { toDegrees } from '../numeric/degrees.ts';
import type { ProgramResult, Results } from '../run.ts';
import { studyJson } from './studyJson.ts';

/**
 * Results as data for other programs. The shape is documented in DEVELOPERS.md and changes only
 * with `format`. Angles in degrees of flexion, torques in N·m (one leg), loads in kg, gains as
 * shares (0.1 is ten per cent). Numbers are rounded to what the model can bear: torques and loads
 * to 0.1, shares to 0.0001.
 */
export function resultsJson(results: Results): object {
  const { scenario, athlete, fits, calibrations, ranking, singlesBefore } = results;
  const { subject, target } = scenario;
  return {
    format: 'torqueleaf results 1',
    scenario: { file: scenario.file, title: scenario.title, subject: subject.code },
    target: {
      action: target.action,
      fromDeg: inDegrees(target.from),
      toDeg: inDegrees(target.to),
      bandsDeg: ranking[0]?.program.bands.map(({ from, to }) => [inDegrees(from), inDegrees(to)]),
    },
    athlete: {
      trained: athlete.trained,
      anglesDeg: results.anglesDeg,
      torque: athlete.groups[results.question.action].torque.map(tenth),
      tests: fits.flatMap(({ action, measured, fitted }) =>
        measured.map(({ deg, torque }, i) => ({
          action,
          angleDeg: tenth(deg),
          measured: tenth(torque),
          fitted: tenth(fitted[i] ?? 0),
        })),
      ),
      ...bandJson(results),
      lifts: calibrations.map(({ single, predicted, factor }, i) => ({
        lift: single.lift,
        toDeg: inDegrees(single.to),
        tested: tenth(single.best),
        ...estimatedFrom(results.singles[i]?.estimated),
        predicted: tenth(predicted),
        factor: share(factor),
      })),
    },
    ranking: ranking.map(({ program, place, tiesWithBest, margin }) => ({
      place,
      tiesWithBest,
      margin: share(margin),
      ...programJson(program),
      muscles: program.muscles.map(({ name, hardSets, proximal, distal, fibre }) => ({
        muscle: name,
        hardSets: rounded(hardSets, 2),
        growthProximal: share(proximal),
        growthDistal: share(distal),
        fibreLength: share(fibre),
      })),
      singles: singlesBefore.map(({ range, load }, i) => ({
        lift: range.lift.name,
        toDeg: inDegrees(range.to),
        before: tenth(load),
        after: tenth(program.singlesAfter[i]?.load ?? load),
      })),
    })),
    ...(results.study ? { study: studyJson(results.study) } : {}),
    cells: results.cells.map((result) => ({
      name: result.cell.name,
      value: result.value,
      shown: cellText(result),
      ...(result.expected ? { expected: result.expected } : {}),
    })),
  };
}

/** The 90 % band of the torque by angle and what the fit found, where the target's action was tested. */
function bandJson({ fits, question }: Results): object {
  const fit = fits.find(({ action }) => action === question.action);
  if (!fit) return {};
  return {
    torqueLow: fit.low.map(tenth),
    torqueHigh: fit.high.map(tenth),
    findings: fit.findings,
  };
}
/** Only where the single was not lifted. */
const estimatedFrom = (estimated: Results['singles'][number]['estimated']) =>
  estimated
    ? {
        estimatedFrom: {
          reps: estimated.reps,
          load: tenth(estimated.load),
          least: tenth(estimated.least),
          most: tenth(estimated.most),
        },
      }
    : {};

function programJson(program: ProgramResult): object {
  const { landing, shares, targetShares, plan } = program;
  return {
    program: program.name,
    meanGain: share(landing.meanGain),
    hitShare: share(landing.hitShare),
    peakBeforeDeg: inDegrees(landing.peakBefore),
    peakAfterDeg: inDegrees(landing.peakAfter),
    minutesPerWeek: tenth(program.minutesPerWeek),
    phases: program.phases.map(({ name, from, to, sessionsPerWeek, minutesPerWeek }) => ({
      name,
      ...{ from, to, sessionsPerWeek },
      minutesPerWeek: tenth(minutesPerWeek),
    })),
    weeks: program.weekly.map(({ week, gain, hardSets, hardSetsByBand, hardSetsByMuscle }) => ({
      week,
      gainInTarget: share(gain),
      hardSets: Object.fromEntries(
        Object.entries(hardSets).map(([action, sets]) => [action, rounded(sets, 2)]),
      ),
      hardSetsByBand: hardSetsByBand.map((sets) => rounded(sets, 2)),
      hardSetsByMuscle: Object.fromEntries(
        Object.entries(hardSetsByMuscle).map(([muscle, sets]) => [muscle, rounded(sets, 2)]),
      ),
    })),
    torqueAfter: program.torqueAfter.map(tenth),
    gainByAngle: program.ratio.map((ratio) => share(ratio - 1)),
    gainByMechanism: Object.fromEntries(
      [...shares].map(([cause, by]) => [
        cause,
        { inTarget: share(targetShares.get(cause) ?? 0), byAngle: by.map(share) },
      ]),
    ),
    exercises: plan.exercises.map(({ exercise, heaviest, tested, lowering, rigUse }) =>
      exercise.kind === 'lift'
        ? {
            lift: exercise.range.lift.name,
            load: tenth(exercise.load),
            heaviest: tenth(exercise.heaviest),
            tested,
            added: rigUse?.samples.map(({ angle, added }) => ({
              atDeg: inDegrees(angle),
              kg: tenth(added),
            })),
            lostAtDeg: heaviest ? inDegrees(heaviest.at.angle) : undefined,
            lostBy: heaviest?.at.action,
            ...(lowering ? { lowered: tenth(lowering.load) } : {}),
          }
        : exercise.kind === 'hold'
          ? { holdAtDeg: inDegrees(exercise.at), effort: share(exercise.effort) }
          : {
              isokinetic: exercise.action,
              speedDegPerSecond: inDegrees(exercise.speed),
              effort: share(exercise.effort),
            },
    ),
    shortfalls: program.state.shortfalls,
  };
}

const rounded = (value: number, digits: number) => Number(value.toFixed(digits)) + 0;
const tenth = (value: number) => rounded(value, 1);
const share = (value: number) => rounded(value, 4);
const inDegrees = (angle: number) => tenth(toDegrees(angle));

/**
 * Data as JSON text. JSON itself lets some characters through that command a terminal or reorder
 * what is read: they are escaped, which means the same.
 */
export function jsonText(data: unknown): string {
  const escaped = (sign: string) => `\\u${sign.charCodeAt(0).toString(16).padStart(4, '0')}`;
  return JSON.stringify(data, null, 1).replace(
    /[\u007f-\u009f\u2028-\u202e\u2066-\u2069]/g,
    escaped,
  );
}
