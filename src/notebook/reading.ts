import { toDegrees, toRadians } from '../numeric/degrees.ts';
import { jointWords } from '../tables/actions.ts';
import { angleExample, isDepthWord } from './angleWords.ts';
import { type Quantity, readQuantity } from './quantity.ts';
import type { Path, Radian, Scenario } from './scenario.ts';
import type { Problem } from './text/problem.ts';
import type { Source } from './text/source.ts';
import type { Dimension, UnitTable } from './unitTable.ts';
import { lastName, pathName } from './valueName.ts';

type Convention = Scenario['convention'];

/** What a quantity must be; SI bounds, outside of which it is a slip of the pen. */
export interface Expected {
  readonly dimension: Dimension;
  readonly example?: string;
  readonly least?: number;
  readonly most?: number;
  /** Said after the value when it is out of bounds. */
  readonly bounds?: string;
}

interface Complaint {
  readonly code: string;
  readonly message: string;
  readonly hint?: string;
  /** Point at the name of the value, not at the value. */
  readonly key?: boolean;
}

const halfTurn = Math.PI;
/** Rounding of a unit must not put a value outside a bound that it equals. */
const slack = 1e-9;
/** Joints that the included convention turns round; ankle and shoulder have their own zero. */
const includedJoints: ReadonlySet<string> = new Set(['knee', 'hip', 'elbow']);

/** No knee bends farther: heel on buttock is about 150 deg (common knowledge, used for slips only). */
const kneeBendsToDeg = 150;

/**
 * One reading of one file: converts values one by one and collects what is wrong with them.
 *
 * Every method takes undefined for a value that was missing or of the wrong kind (already
 * reported) and answers undefined for a value that cannot be used.
 */
export class Reading {
  readonly source: Source;
  readonly units: UnitTable;
  /** Undefined if the file does not say: then angles are checked for their unit only. */
  readonly convention: Convention | undefined;
  readonly problems: Problem[];
  /** What is allowed but worth a look. */
  readonly notes: Problem[];

  /** How much of tables was read so far. */
  tables = { characters: 0, lines: 0 };

  /** @param within the reading that gathers the problems, for a file that another one names */
  constructor(
    source: Source,
    units: UnitTable,
    convention: Convention | undefined,
    within?: Pick<Reading, 'problems' | 'notes'>,
  ) {
    this.source = source;
    this.units = units;
    this.convention = convention;
    this.problems = within?.problems ?? [];
    this.notes = within?.notes ?? [];
  }

  /** Collects a problem at a path; never throws. */
  refuse(path: Path, complaint: Complaint): void {
    this.problems.push(this.located(path, complaint));
  }

  /** Collects a remark at a path; never throws. */
  remark(path: Path, complaint: Complaint): void {
    this.notes.push(this.located(path, complaint));
  }

  /** Reads a quantity into SI; problems are collected, never thrown. */
  quantity(path: Path, raw: string | undefined, expected: Expected): number | undefined {
    if (raw === undefined) return undefined;
    const quantity = readQuantity(raw, expected.dimension, this.units, expected.example);
    const value = this.valueOf(path, quantity);
    if (value === undefined) return undefined;
    const { least = -Infinity, most = Infinity, bounds = 'that is out of range' } = expected;
    const tolerance = slack * Math.max(1, Math.abs(value));
    if (value >= least - tolerance && value <= most + tolerance) return value;
    const message = `${lastName(path)} is ${raw}; ${bounds}`;
    this.refuse(path, { code: 'out-of-bounds', message });
    return undefined;
  }

  /**
   * Reads an angle of a joint into an anatomical one (radians; 0 = straight, flexion positive).
   *
   * Knee and hip follow the file's convention; an ankle is always counted from neutral.
   *
   * @param joint undefined if it is not known which: then only the unit is checked
   * @param options.key the angle is itself the name of a value, as in `40 deg: [118]`
   * @param options.heights the value may also be a height, which a depth word is told
   * @returns undefined after a problem, and in a file without a convention; never throws
   */
  angle(
    path: Path,
    raw: string | undefined,
    joint: string | undefined,
    { key = false, heights = false }: { readonly key?: boolean; readonly heights?: boolean } = {},
  ): Radian | undefined {
    if (raw === undefined) return undefined;
    if ((joint ?? 'knee') === 'knee' && isDepthWord(raw)) {
      this.refuse(path, { ...this.depthComplaint(lastName(path), raw, heights), key });
      return undefined;
    }
    const example = joint === 'ankle' ? '10 deg' : angleExample('75 deg', this.convention);
    const quantity = readQuantity(raw, 'angle', this.units, example);
    const written = this.valueOf(path, quantity, key);
    if (written === undefined || this.convention === undefined) return undefined;
    const flexion = withoutDust(this.turns(joint) ? halfTurn - written : written);
    const complaint = joint === 'knee' ? this.kneeComplaint(flexion) : undefined;
    if (complaint) this.refuse(path, { ...complaint, key });
    return complaint ? undefined : flexion;
  }

  /** Whether this file's angles of a joint fall while it bends; never throws. */
  turns(joint: string | undefined): boolean {
    return this.convention === 'included' && includedJoints.has(joint ?? 'knee');
  }

  /** A stretch of angles, given in degrees of flexion, as this file writes it; never throws. */
  spanText([least, most]: readonly [number, number], joint: string): string {
    if (!this.turns(joint)) return `${least} to ${most} deg`;
    return `${180 - least} to ${180 - most} deg included`;
  }

  /** Writes a knee or hip angle as this file does, in degrees; never throws. */
  angleText(flexion: Radian): string {
    if (this.convention !== 'included') return `${degreesText(flexion)} deg`;
    return `${degreesText(halfTurn - flexion)} deg included`;
  }

  /** Writes an angle of any joint as this file does, in degrees; never throws. */
  jointText(angle: Radian, joint: string | undefined): string {
    return this.turns(joint) ? this.angleText(angle) : `${degreesText(angle)} deg`;
  }

  /** Writes an angle as this file does and as flexion of the joint, which limits and lifts are stated in; never throws. */
  flexionText(flexion: Radian, joint = 'knee'): string {
    const anatomical = `${degreesText(flexion)} deg of ${jointMotion(joint)}`;
    return this.turns(joint) ? `${this.angleText(flexion)} (${anatomical})` : anatomical;
  }

  private depthComplaint(name: string, raw: string, heights: boolean): Complaint {
    const level = angleExample('115 deg', this.convention);
    const message = `${name} is "${raw}"; a depth word is not an angle`;
    const hint = `write the knee angle you see, for example ${level} (thigh about level)${heights ? ', or thigh level' : ''}`;
    return { code: 'depth-word', message, hint };
  }

  private kneeComplaint(flexion: Radian): Complaint | undefined {
    const written = this.angleText(flexion);
    if (flexion > toRadians(kneeBendsToDeg) + slack) {
      const message =
        this.convention === 'included'
          ? `${written} is a knee bent by ${degreesText(flexion)} deg, more than a knee bends; is this a flexion angle (0 = straight)? then write angles: flexion`
          : `${written} of knee flexion is more than a knee bends; is this an included angle (180 = straight)? then write angles: included`;
      return { code: 'convention', message };
    }
    if (flexion >= -slack) return undefined;
    const straight = this.convention === 'included' ? 'above 180' : 'below 0';
    return { code: 'out-of-bounds', message: `${written} is past a straight knee (${straight})` };
  }

  private valueOf(path: Path, quantity: Quantity, key = false): number | undefined {
    if (quantity.fault === undefined) return quantity.value;
    const { code, message, hint } = quantity.fault;
    const name =
      key && code !== 'missing-unit' ? `a name in ${lastName(path.slice(0, -1))}` : undefined;
    const shown = name ?? (code === 'missing-unit' ? pathName(path) : lastName(path));
    this.refuse(path, {
      code,
      message: `${shown} ${message}`,
      key,
      ...(hint === undefined ? {} : { hint }),
    });
    return undefined;
  }

  private located(path: Path, { code, message, hint, key = false }: Complaint): Problem {
    const at = this.source.at(path, { key });
    return { code, message, at, ...(hint === undefined ? {} : { hint }) };
  }
}

/** Whether the first value lies above the second by more than rounding; never throws. */
export const isAbove = (value: number, bound: number): boolean => value > bound + slack;

/** Radians as degrees with at most two decimals; never throws. */
export const degreesText = (angle: Radian): string => String(Number(toDegrees(angle).toFixed(2)));

/** 180 deg included is straight: 0, not 4e-16. */
const withoutDust = (angle: Radian): Radian => (Math.abs(angle) < 1e-12 ? 0 : angle);

/** "knee flexion", "ankle dorsiflexion": how an angle of a joint is named. */
function jointMotion(joint: string): string {
  const words = Object.entries(jointWords).find(([name]) => name === joint)?.[1];
  return words ? `${words.name} ${words.motion}` : `${joint} flexion`;
}
