import type { MeasuredTorque } from '../inference/fitStrengthCurve.ts';
import { isLikely, missOfShape, plausibleTorque } from '../inference/plausibleTorque.ts';
import type { Path } from '../notebook/scenario.ts';
import type { TorqueTest } from '../notebook/tests/strengthTest.ts';
import type { Problem } from '../notebook/text/problem.ts';
import type { Source } from '../notebook/text/source.ts';
import { type ActionName, actionNamed, isAction } from '../tables/actions.ts';

/** One tested angle: the torque that counts there, and where it stands. */
export interface PlacedTorque extends MeasuredTorque {
  readonly path: Path;
}

/** Torques that sit oddly with the athlete's body mass or the usual curve: allowed, but asked about. */
export function torqueRemarks(
  source: Source,
  test: TorqueTest,
  points: readonly PlacedTorque[],
  bodyMass: number,
): Problem[] {
  const { action } = test;
  if (!isAction(action) || points.length === 0) return [];
  const odd = points.filter(({ deg, torque }) => !isPlausible(action, bodyMass, deg, torque));
  const [first] = odd;
  if (first) return [oddTorque(source, test, { action, bodyMass, points, first, odd: odd.length })];
  return turned(source, test, action, points);
}

function isPlausible(action: ActionName, bodyMass: number, deg: number, torque: number): boolean {
  const [least, most] = plausibleTorque(action, bodyMass, deg);
  return torque >= least && torque <= most;
}

interface Odd {
  readonly action: ActionName;
  readonly bodyMass: number;
  readonly points: readonly PlacedTorque[];
  readonly first: PlacedTorque;
  readonly odd: number;
}

function oddTorque(
  source: Source,
  test: TorqueTest,
  { action, bodyMass, points, first, odd }: Odd,
): Problem {
  const { deg, torque, path } = first;
  const band = plausibleTorque(action, bodyMass, deg).map((end) => (end / bodyMass).toFixed(1));
  const others = odd > 1 ? `, and ${odd - 1} more of its angles with it` : '';
  const message = `${action} of ${torque.toFixed(0)} N m at ${deg.toFixed(0)}° is ${(torque / bodyMass).toFixed(1)} N m for each kg of body mass${others}; people make ${band.join(' to ')} there`;
  const slips = slipsOf(test).filter(({ factor }) =>
    points.every((point) => isLikely(action, bodyMass, point.deg, factor * point.torque)),
  );
  const meant = slips.map(({ unit }) => unit).join(' or ');
  const hint =
    meant === ''
      ? 'check unit, angle, body mass and that it is of one side'
      : `were the trials in ${meant}, they would be usual: check the unit${test.measure.lever === undefined ? '' : ' and the lever arm'}`;
  return { code: 'odd-torque', message, at: source.at(path, { key: true }), hint };
}

interface Slip {
  readonly unit: string;
  /** Torque in that unit over torque as written. */
  readonly factor: number;
}

/** Newtons in one unit of force, by definition (pound 1959, standard gravity 1901). */
const newtonsIn: Readonly<Record<string, number>> = {
  N: 1,
  kg: 9.80665,
  kgf: 9.80665,
  lb: 4.4482216152605,
  lbs: 4.4482216152605,
  lbf: 4.4482216152605,
};

/** Units that a device may have shown in place of the one written, each once. */
function slipsOf({ measure: { unit, lever } }: TorqueTest): readonly Slip[] {
  const written = newtonsIn[unit];
  if (lever === undefined || written === undefined) return [];
  const forces = ['N', 'kg', 'lb'].map((name) => ({
    unit: name,
    factor: (newtonsIn[name] ?? written) / written,
  }));
  const torque = { unit: 'N m (a torque already)', factor: 1 / (written * lever) };
  return [torque, ...forces.filter(({ factor }) => Math.abs(factor - 1) > 0.01)];
}

/**
 * Misses of the usual curve, as a share: tests scatter by about 6 % and people's curves differ by 12 %
 * at an end (tables/strength.ts), so 20 % is asked about if the other way of counting at least
 * halves it (working values).
 */
const farOff = 0.2;
const anglesToTell = 3;

/** Angles counted the other way fit clearly better: asked, never turned. */
function turned(
  source: Source,
  test: TorqueTest,
  action: ActionName,
  points: readonly PlacedTorque[],
): Problem[] {
  const { joint, rangeDeg } = { joint: '', rangeDeg: [0, 0], ...actionNamed(action) };
  if (!['knee', 'hip', 'elbow'].includes(joint) || points.length < anglesToTell) return [];
  const other = points.map(({ deg, torque }) => ({ deg: 180 - deg, torque }));
  const [least = 0, most = 0] = rangeDeg;
  if (other.some(({ deg }) => deg < least || deg > most)) return [];
  const [asWritten, asOther] = [missOfShape(action, points), missOfShape(action, other)];
  if (asWritten < farOff || asOther > asWritten / 2) return [];
  const share = (miss: number) => `${(100 * miss).toFixed(0)} %`;
  const message = `the trials of ${action} miss the usual curve by ${share(asWritten)}, and by ${share(asOther)} if their angles are counted the other way round`;
  const hint =
    'check whether 0 or 180 deg is the straight joint, and angles: flexion or included; nothing to correct if it is right';
  const at = source.at([...test.path, test.table === undefined ? 'trials' : 'trials from'], {
    key: true,
  });
  return [{ code: 'other-convention', message, at, hint }];
}
