/** Ends of a lift's range: an angle, or a height that the model turns into one. */
import type { Lift } from '../mechanics/lift.ts';
import { toRadians } from '../numeric/degrees.ts';
import { isHeightText } from './angleWords.ts';
import { optional } from './complete.ts';
import {
  beyondComplaint,
  type HeightAt,
  severalComplaint,
  unbalancedComplaint,
  unfitComplaint,
} from './heightComplaints.ts';
import type { End, KneeLimit } from './range.ts';
import type { Expected, Reading } from './reading.ts';
import type { Height, Kilogram, Path, PlacedHeight, Radian, Subject } from './scenario.ts';

/** What the model answers: the angle, or which heights there are. */
export type HeightAnswer =
  | (Omit<PlacedHeight, 'height'> & { readonly state: 'found' })
  | { readonly state: 'beyond'; readonly least: HeightAt; readonly most: HeightAt }
  | { readonly state: 'several'; readonly angles: readonly Radian[] }
  | { readonly state: 'unbalanced'; readonly higher?: HeightAt };

/** The model's part: the leading angle at which a body with a load is at a height. */
export type AngleAt = (
  subject: Subject,
  lift: Lift,
  height: Height,
  load: Kilogram | undefined,
  stretch: readonly [Radian, Radian],
) => HeightAnswer;

/** Whose heights they are. */
export interface Standing {
  /** Undefined if the file does not say it rightly: that is reported, and heights are not looked at. */
  readonly subject: Subject | undefined;
  readonly kneeLimit: KneeLimit | undefined;
  readonly angleAt: AngleAt | undefined;
  /** Heights of tested singles: work at the same height of the same lift is over the same range. */
  readonly tested?: readonly { readonly lift: string; readonly placed: PlacedHeight }[];
}

const level: Expected = {
  dimension: 'length',
  least: 0.05,
  most: 2.5,
  bounds: 'a height lies between 5 cm and 2.5 m',
};

/**
 * Reads one end of a lift's range, or the place of a hold.
 *
 * @param around the lift and its load if they are known
 * @returns the angle, with the height it came from; problems are collected, never thrown
 */
export function readPlace(
  reading: Reading,
  raw: string | undefined,
  path: Path,
  around: Standing & {
    readonly lift: Lift | undefined;
    /** Of the action that is held, if it is one. */
    readonly joint?: string | undefined;
    readonly load?: Kilogram | undefined;
  },
): End | undefined {
  const { lift, joint = lift?.leading } = around;
  if (raw === undefined || !isHeightText(raw)) {
    const heights = lift?.support === 'feet';
    const angle = reading.angle(path, raw, joint, { heights });
    return angle === undefined ? undefined : { angle, path };
  }
  const height = readHeight(reading, raw, path);
  if (!lift && around.joint !== undefined) {
    const message = `${path.at(-1)} is "${raw}"; only a lift that stands on the floor is held at a height`;
    const hint = `write the angle, for example ${reading.angleText(toRadians(75))}`;
    reading.refuse(path, { code: 'no-such-height', message, hint });
  }
  if (!height || !lift) return undefined;
  const placed = placeHeight(reading, height, path, lift, around);
  return placed && { angle: placed.angle, path, placed };
}

function placeHeight(
  reading: Reading,
  height: Height,
  path: Path,
  lift: Lift,
  around: Standing & { readonly load?: Kilogram | undefined },
): PlacedHeight | undefined {
  const { subject, angleAt, load, kneeLimit, tested = [] } = around;
  const code = 'no-such-height';
  const unfit = unfitComplaint(reading, height, lift);
  if (unfit) reading.refuse(path, { code, ...unfit });
  if (unfit || !subject) return undefined;
  const same = tested.find((one) => one.lift === lift.name && isSame(one.placed.height, height));
  if (same) return same.placed;
  if (!angleAt) throw new Error('a height was written, but no model to turn it into an angle');
  const [first, last] = lift.rangeDeg;
  const limit = lift.leading === 'knee' ? kneeLimit : undefined;
  const stretch = [toRadians(first), Math.min(toRadians(last), limit?.angle ?? Infinity)] as const;
  const answer = angleAt(subject, lift, height, load, stretch);
  switch (answer.state) {
    case 'found': {
      const { state: _, ...found } = answer;
      return { height, ...found };
    }
    case 'beyond': {
      const ends = { end: stretch[1], limit };
      reading.refuse(path, { code, ...beyondComplaint(reading, height, lift, ends, answer) });
      return undefined;
    }
    case 'several':
      reading.refuse(path, { code, ...severalComplaint(reading, height, lift, answer) });
      return undefined;
    case 'unbalanced':
      reading.refuse(path, { code, ...unbalancedComplaint(reading, height, lift, answer) });
      return undefined;
  }
}

/** The heights among some ends, as an entry to spread; never throws. */
export function heightsOf(ends: readonly (End | undefined)[]): {
  readonly heights?: readonly PlacedHeight[];
} {
  const heights = ends.flatMap((end) => (end?.placed ? [end.placed] : []));
  return optional('heights', heights.length > 0 ? heights : undefined);
}

function readHeight(reading: Reading, raw: string, path: Path): Height | undefined {
  const text = raw.trim();
  if (/^thighs? level$/i.test(text)) return { kind: 'thigh level' };
  const match = /^(box|pin)s?(?:\s+(?:of|at))?\s+(\S.*)$/i.exec(text);
  const isBox = /^box/i.test(text);
  const example = isBox ? 'box 42 cm' : 'pins 95 cm';
  if (!match) {
    const message = `${path.at(-1)} is "${raw}"; a height is written as thigh level, box 42 cm or pins 95 cm`;
    reading.refuse(path, { code: 'bad-number', message });
    return undefined;
  }
  const height = reading.quantity(path, match[2], { ...level, example });
  return height === undefined ? undefined : { kind: isBox ? 'box' : 'pins', height };
}

const isSame = (a: Height, b: Height): boolean =>
  a.kind === 'thigh level' || b.kind === 'thigh level'
    ? a.kind === b.kind
    : a.kind === b.kind && Math.abs(a.height - b.height) < 1e-6;
