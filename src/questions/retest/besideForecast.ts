import { isRefusal } from '../../inference/reliability/refusal.ts';
import {
  type UpdatedAmplitude,
  updatedAmplitude,
} from '../../inference/retest/updatedAmplitude.ts';
import { atAngle } from '../../mechanics/angleGrid.ts';
import { meanOf } from '../../numeric/moments.ts';
import type { JudgedAction } from './judgeAction.ts';
import { meanOverAngles, type Predicted } from './predictedGain.ts';

/**
 * Sets the forecast beside what was found of the target, and what that says of the next forecast.
 *
 * Only beside changes from the occasion just before: over more training the forecast of one program
 * would be held against the gain of several. Several set-ups of the target are one athlete after one
 * program: their mean gain, with the largest of their errors as if all errors went together, says
 * how much of the forecast was made.
 *
 * @param earlier actions of the retests before: what they say of the athlete is where this one begins
 */
export function besideForecast(
  found: readonly JudgedAction[],
  forecast: Predicted | undefined,
  earlier: readonly JudgedAction[],
): JudgedAction[] {
  if (!forecast) return [...found];
  const beside = found.map((action) =>
    action.isTarget && action.isDirect
      ? { ...action, predicted: predictedFor(action, forecast) }
      : action,
  );
  const amplitude = amplitudeOf(beside, earlier.flatMap((one) => one.amplitude ?? []).at(-1));
  const first = beside.findIndex(({ predicted }) => predicted?.inTarget !== undefined);
  return beside.map((action, i) => (amplitude && i === first ? { ...action, amplitude } : action));
}

function predictedFor(
  { retest: { angles, target } }: JudgedAction,
  forecast: Predicted,
): NonNullable<JudgedAction['predicted']> {
  const byAngle = angles.map(({ angle }) => atAngle(forecast.ratio, angle) - 1);
  const inside = angles.flatMap(({ angle, inTarget }) => (inTarget ? [angle] : []));
  if (inside.length === 0 || 'refused' in target) return { byAngle };
  return { inTarget: meanOverAngles(forecast, inside), byAngle };
}

function amplitudeOf(
  actions: readonly JudgedAction[],
  believed: UpdatedAmplitude | undefined,
): UpdatedAmplitude | undefined {
  const seen = actions.flatMap(({ predicted, retest: { target } }) =>
    predicted?.inTarget === undefined || 'refused' in target
      ? []
      : [{ ...target, expected: predicted.inTarget }],
  );
  if (seen.length === 0) return undefined;
  const amplitude = updatedAmplitude({
    observed: meanOf(seen.map(({ gain }) => gain.value)),
    standardError: Math.max(...seen.map(({ standardError }) => standardError)),
    predicted: meanOf(seen.map(({ expected }) => expected)),
    ...(believed ? { prior: { mean: believed.ratio, spread: believed.spread } } : {}),
  });
  return isRefusal(amplitude) ? undefined : amplitude;
}
