import { gridDeg } from '../mechanics/angleGrid.ts';
import { actions } from '../tables/actions.ts';
import {
  errorsOff,
  type FittedCurve,
  fitStrengthCurve,
  fittedTorque,
  logErrorAt,
} from './fitStrengthCurve.ts';
import { type Cause, causesOf, seriesCause } from './slips.ts';

/** Something about a fit that a coach should know or can mend; the page finds the words. */
export type Finding =
  /** Tested angles so far apart that the curve between them is a guess. */
  | {
      readonly kind: 'gap';
      readonly fromDeg: number;
      readonly toDeg: number;
      readonly error: number;
    }
  /** The part of the action's range on one side of all tested angles, its error at the far end. */
  | {
      readonly kind: 'beyond';
      readonly side: 'below' | 'above';
      readonly fromDeg: number;
      readonly toDeg: number;
      readonly error: number;
    }
  /** The tests hardly tell this parameter: its error stays near the spread between persons. */
  | { readonly kind: 'undetermined'; readonly parameter: 'place' | 'tilt' }
  /** Further from the mean person than all but one in a hundred, counted in spreads. */
  | {
      readonly kind: 'unusual';
      readonly parameter: 'size' | 'place' | 'tilt';
      readonly spreads: number;
    }
  /** The strongest angle has tests on one side only. */
  | { readonly kind: 'open peak'; readonly peakDeg: number; readonly side: 'below' | 'above' }
  /** Several curves fit about equally well. */
  | { readonly kind: 'several curves' }
  /** A test that the others do not expect; `point` counts within the tests of the action. */
  | {
      readonly kind: 'disagrees';
      readonly point: number;
      readonly deg: number;
      readonly measured: number;
      /** What the other tests let expect there, N·m. */
      readonly expected: number;
      readonly causes: readonly Cause[];
    }
  /** All tests together fit far better if read another way. */
  | { readonly kind: 'misread'; readonly cause: Cause };

/** Tested angles further apart than this leave a gap (working value, degrees). */
const widestGapDeg = 30;
/** Errors of a parameter above this share of its spread say that the tests do not tell it. */
const hardlyTold = 0.9;
/** Spreads beyond which one in a hundred persons lies (normal distribution). */
const unusualSpreads = 2.576;
/** Errors beyond which three tests in a thousand lie by chance. */
const farErrors = 3;

/** Everything to say about a fitted curve, the doubts about single tests first. */
export function fitFindings(curve: FittedCurve): Finding[] {
  const misread = seriesCause(curve);
  return [
    ...(misread ? [{ kind: 'misread' as const, cause: misread }] : disagreements(curve)),
    ...(curve.agreed ? [] : [{ kind: 'several curves' as const }]),
    ...unusual(curve),
    ...openPeak(curve),
    ...untested(curve),
    ...undetermined(curve),
  ];
}

/**
 * Tests that those left do not expect: the furthest off is set aside, then the next, up to a third
 * of them. Of two tests that contradict each other nobody can say which is wrong: the first.
 */
function disagreements(curve: FittedCurve): Finding[] {
  let kept = curve.measured.map((point, index) => ({ point, index }));
  const found: Finding[] = [];
  const most = Math.max(1, Math.floor(kept.length / 3));
  while (kept.length > 1 && found.length < most) {
    const judged = kept.map((each) => {
      const others = kept.filter((other) => other !== each).map(({ point }) => point);
      const fit = fitStrengthCurve(curve, others);
      return { ...each, others, fit, errors: Math.abs(errorsOff(fit, each.point)) };
    });
    const worst = judged.reduce((a, b) => (b.errors > a.errors + 1e-9 ? b : a));
    if (worst.errors <= farErrors) break;
    const { deg, torque } = worst.point;
    found.push({
      kind: 'disagrees',
      point: worst.index,
      deg,
      measured: torque,
      expected: fittedTorque(worst.fit, deg),
      causes: causesOf(worst.point, worst.fit),
    });
    kept = kept.filter(({ index }) => index !== worst.index);
  }
  return found;
}

function unusual({ parameters }: FittedCurve): Finding[] {
  return (['size', 'place', 'tilt'] as const).flatMap((parameter, i) => {
    const spreads = parameters[i] ?? 0;
    return Math.abs(spreads) > unusualSpreads
      ? [{ kind: 'unusual' as const, parameter, spreads }]
      : [];
  });
}

/** Without a shape of its own, or where the curve is level, there is no peak to ask about. */
function openPeak(curve: FittedCurve): Finding[] {
  if (!curve.isShaped) return [];
  const [least, most] = actions[curve.action].rangeDeg;
  const inside = gridDeg.filter((deg) => deg >= least && deg <= most);
  const torques = inside.map((deg) => fittedTorque(curve, deg));
  const top = Math.max(...torques);
  const peakDeg = inside[torques.indexOf(top)] ?? least;
  if (top < 1.1 * Math.min(...torques)) return [];
  const tested = curve.measured.map(({ deg }) => deg);
  if (peakDeg <= Math.min(...tested)) return [{ kind: 'open peak', peakDeg, side: 'below' }];
  if (peakDeg >= Math.max(...tested)) return [{ kind: 'open peak', peakDeg, side: 'above' }];
  return [];
}

/** Gaps between tested angles, with the error in the middle, and what lies beyond them. */
function untested(curve: FittedCurve): Finding[] {
  const [least, most] = actions[curve.action].rangeDeg;
  const tested = [...new Set(curve.measured.map(({ deg }) => deg))].sort((a, b) => a - b);
  const [first = least, last = most] = [tested[0], tested.at(-1)];
  const error = (deg: number) => logErrorAt(curve, deg);
  const beyond = (side: 'below' | 'above', fromDeg: number, toDeg: number): Finding[] =>
    toDeg > fromDeg
      ? [{ kind: 'beyond', side, fromDeg, toDeg, error: error(side === 'below' ? fromDeg : toDeg) }]
      : [];
  return [
    ...tested.flatMap((deg, i): Finding[] => {
      const next = tested[i + 1] ?? deg;
      if (next - deg <= widestGapDeg) return [];
      return [{ kind: 'gap', fromDeg: deg, toDeg: next, error: error((deg + next) / 2) }];
    }),
    ...beyond('below', least, first),
    ...beyond('above', last, most),
  ];
}

function undetermined({ isShaped, covariance }: FittedCurve): Finding[] {
  if (!isShaped) return [];
  return (['place', 'tilt'] as const).flatMap((parameter, i) =>
    Math.sqrt(covariance[i + 1]?.[i + 1] ?? 0) > hardlyTold
      ? [{ kind: 'undetermined' as const, parameter }]
      : [],
  );
}
