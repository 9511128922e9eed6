import type { Finding } from '../inference/fitFindings.ts';
import type { StrengthFit } from '../inference/fitStrength.ts';
import type { Cause } from '../inference/slips.ts';
import { capital, listInWords, newtonMetres, signedPercent } from './words.ts';

/** What a coach should know of a fitted curve, the doubts about tests first; few and short. */
export function findingItems(fit: StrengthFit): string[] {
  const { findings, action } = fit;
  return [
    ...findings.flatMap((finding) => doubts(finding, action)),
    ...thinlyTested(findings),
    ...untold(findings),
  ];
}

function doubts(finding: Finding, action: string): string[] {
  switch (finding.kind) {
    case 'disagrees': {
      const { deg, measured, expected, causes } = finding;
      const ways = causes.map(causeOfOne);
      return [
        `${capital(action)} of ${newtonMetres(measured)} at ${inDegrees(deg)} does not fit the other tests, which give about ${newtonMetres(expected)} there. Worth checking: ${ways.join('; or ')}.`,
      ];
    }
    case 'misread':
      return [
        `All tests of ${action} would fit people far better with another reading. Worth checking: ${causeOfAll(finding.cause)}.`,
      ];
    case 'several curves':
      return [
        `The tests of ${action} fit several curves about equally well; the likeliest is shown.`,
      ];
    case 'unusual':
      return [
        `${unusualWords[finding.parameter]} of the ${action} curve is further from the mean person’s than in 99 of 100 people: check unit, lever arm, and that the torques are of one side.`,
      ];
    default:
      return [];
  }
}

const unusualWords = {
  size: 'The size',
  place: 'The strongest angle',
  tilt: 'The slant',
} as const;

/** Where the band is wide for want of tests, in one sentence. */
function thinlyTested(findings: readonly Finding[]): string[] {
  const gaps = findings.filter((finding) => finding.kind === 'gap');
  const ends = findings.filter((finding) => finding.kind === 'beyond');
  const places = [
    ...gaps.map(
      ({ fromDeg, toDeg, error }) =>
        `between ${inDegrees(fromDeg)} and ${inDegrees(toDeg)} (${band(error)} at the widest)`,
    ),
    ...ends.map(({ side, fromDeg, toDeg, error }) =>
      side === 'below'
        ? `below ${inDegrees(toDeg)} (${band(error)} at ${inDegrees(fromDeg)})`
        : `above ${inDegrees(fromDeg)} (${band(error)} at ${inDegrees(toDeg)})`,
    ),
  ];
  if (places.length === 0) return [];
  return [`Not tested, so the curve leans on tables: ${listInWords(places)}.`];
}

/** The 90 % band of a log error about the curve, "-47 to +90 %". */
function band(error: number): string {
  const [low, high] = [-1, 1].map((side) => Math.expm1(1.6449 * side * error));
  return `${signedPercent(low ?? 0).replace(' %', '')} to ${signedPercent(high ?? 0)}`;
}

/** What the tests leave open about the shape. */
function untold(findings: readonly Finding[]): string[] {
  return findings.flatMap((finding) => {
    if (finding.kind === 'open peak')
      return [
        `Every test lies on one side of the strongest angle (about ${inDegrees(finding.peakDeg)} by the curve): one more ${finding.side === 'above' ? 'beyond' : 'below'} it would settle where it is.`,
      ];
    if (finding.kind === 'undetermined' && finding.parameter === 'place')
      return ['These tests hardly tell the strongest angle: it is mostly the tables’.'];
    return [];
  });
}

function causeOfOne(cause: Cause): string {
  switch (cause.kind) {
    case 'angle':
      return 'the angle may be counted from the other end (180° less it)';
    case 'unit':
      return `${slipWords[cause.slip]}`;
    case 'lever':
      return 'the pad or the axis of the rig may have stood elsewhere (lever arm), or it is a slip';
    case 'slip':
      return 'a slip in this one number or its angle';
  }
}

function causeOfAll(cause: Cause): string {
  return cause.kind === 'angle'
    ? 'the angles may be counted from the other end (180° less each; see `angles:`)'
    : causeOfOne(cause);
}

const slipWords: Readonly<Record<Extract<Cause, { kind: 'unit' }>['slip'], string>> = {
  'foot-pounds as newton metres': 'foot-pounds may have been written as N·m (1.36 times too small)',
  'foot-pounds converted twice':
    'N·m may have been converted from foot-pounds twice (1.36 times too large)',
  'kilograms as newtons':
    'a pull in kilograms may have been taken as newtons (9.8 times too small)',
  'newtons as kilograms':
    'a pull in newtons may have been taken as kilograms (9.8 times too large)',
  'kilograms as pounds': 'a pull in kilograms may have been taken as pounds (2.2 times too small)',
  'pounds as kilograms':
    'a pull in pounds may have been taken as kilograms (2.2 times too large), or both sides tested together',
  'a decimal place too small': 'the decimal point may stand one place too far left',
  'a decimal place too large': 'the decimal point may stand one place too far right',
};

const inDegrees = (deg: number) => `${deg.toFixed(0)}°`;
