import type { JudgedAction } from '../questions/retest/judgeAction.ts';
import type { JudgedRetest } from '../questions/retest/judgeRetests.ts';
import type { Predicted } from '../questions/retest/predictedGain.ts';
import { responseBounds } from '../tables/testError.ts';
import type { Section } from './report.ts';
import { setUpName } from './setUpName.ts';
import { percent, plural, signedPercent } from './words.ts';

/** The forecast of the program beside what the retest found of the target; nothing where none stands. */
export function forecastSection(
  { forecast, actions: judged }: JudgedRetest,
  which: string,
): Section[] {
  if (!forecast) return [];
  const items = judged.flatMap((action) => besideText(forecast, action));
  if (items.length === 0) return [];
  return [
    {
      heading: `Forecast and retest${which}`,
      blocks: items.map((text) => ({ kind: 'text', text })),
    },
  ];
}

function besideText(forecast: Predicted, judged: JudgedAction): string[] {
  const expected = judged.predicted?.inTarget;
  if (expected === undefined || 'refused' in judged.retest.target) return [];
  const { gain } = judged.retest.target;
  const seen = `${signedPercent(gain.value)} (${signedPercent(gain.low)} to ${signedPercent(gain.high)})`;
  const band = percent(forecast.miss * expected);
  const name = setUpName(judged.apart);
  const of = name === '' ? '' : ` (${name})`;
  return [
    `"${forecast.program}" was expected to add ${signedPercent(expected)} over the target’s tested angles in ${plural(forecast.weeks, 'week')}${of}, give or take ${band}; the retest has ${seen}.${amplitudeText(judged)}`,
  ];
}

function amplitudeText({ amplitude }: JudgedAction): string {
  if (!amplitude) return '';
  const { ratio, low, high, weight } = amplitude;
  const { least, most } = responseBounds;
  const held = Math.min(Math.max(ratio, least), most);
  const beyond =
    held === ratio
      ? ''
      : ` (the ${held === least ? 'least' : 'most'} that a file takes; by this retest it would be ${percent(ratio)})`;
  return ` For the next plan, write response: ${percent(held)} under athlete${beyond}: so much of the forecast gains this athlete may make, anything from ${percent(Math.max(low, 0))} to ${percent(high)}. That is weak evidence: this retest counts for ${percent(weight)}, what was believed before for the rest, and people do not reliably stay strong or weak responders.`;
}
