import type { MuscledJoint } from '../mechanics/lift.ts';
import { toDegrees } from '../numeric/degrees.ts';

/** One direction in which muscles turn a joint. */
export interface Action {
  readonly joint: MuscledJoint;
  /** 1 where the muscles extend the joint (at the ankle: push the foot down), −1 where they flex it. */
  readonly sense: 1 | -1;
  /** The muscles in a coach's words. */
  readonly muscles: string;
  /** Joint angles (degrees, flexion positive) at which these muscles are shortest and longest. */
  readonly shortDeg: number;
  readonly longDeg: number;
  /**
   * Where the joint is so straight that capsule and ligaments carry what asks these muscles, degrees
   * (common knowledge of standing with locked knees; the angle is a working value).
   */
  readonly carriedBelowDeg?: number;
  /**
   * Where the neighbouring joints are when this action is tested alone, degrees: seated for the knee,
   * knee straight for the calf, bent for the hip (common practice of dynamometer tests). It decides
   * the length of muscles over both joints.
   */
  readonly testedAt?: Readonly<Partial<Record<MuscledJoint, number>>>;
  /** Angles over which strength is known or continued, degrees. */
  readonly rangeDeg: readonly [number, number];
  /** What is weak about the numbers, in words for a coach; absent where they are fair. */
  readonly weak?: string;
}

/** How a joint is spoken of: its name, the motion counted positive, and where that counts from. */
export const jointWords: Readonly<
  Record<MuscledJoint, { readonly name: string; readonly motion: string; readonly zero: string }>
> = {
  ankle: { name: 'ankle', motion: 'dorsiflexion', zero: 'foot square to the shank' },
  knee: { name: 'knee', motion: 'flexion', zero: 'straight' },
  hip: { name: 'hip', motion: 'flexion', zero: 'thigh in line with the trunk' },
  shoulder: { name: 'shoulder', motion: 'flexion', zero: 'arm at the side' },
  'shoulder across': {
    name: 'shoulder',
    motion: 'horizontal adduction',
    zero: 'arm straight out to the side',
  },
  elbow: { name: 'elbow', motion: 'flexion', zero: 'straight' },
};

/** Joint actions the model can test, aim at, hold and train. */
export const actions = {
  'knee extension': {
    joint: 'knee',
    muscles: 'knee extensors',
    sense: 1,
    shortDeg: 0,
    longDeg: 110,
    testedAt: { hip: 85 },
    rangeDeg: [0, 140],
  },
  'knee flexion': {
    joint: 'knee',
    muscles: 'hamstrings',
    carriedBelowDeg: 15,
    sense: -1,
    shortDeg: 110,
    longDeg: 0,
    testedAt: { hip: 85 },
    rangeDeg: [0, 130],
  },
  'hip extension': {
    joint: 'hip',
    muscles: 'hip extensors',
    sense: 1,
    shortDeg: 0,
    longDeg: 110,
    testedAt: { knee: 90 },
    rangeDeg: [0, 130],
    weak: 'sources for the strength of the hip extensors differ twofold',
  },
  'hip flexion': {
    joint: 'hip',
    muscles: 'hip flexors',
    carriedBelowDeg: 5,
    sense: -1,
    shortDeg: 120,
    longDeg: -10,
    testedAt: { knee: 90 },
    rangeDeg: [-10, 120],
    weak: 'sources disagree on the angle where hip flexors are strongest (0° or 105°)',
  },
  'ankle plantarflexion': {
    joint: 'ankle',
    muscles: 'calf muscles',
    sense: 1,
    shortDeg: -40,
    longDeg: 25,
    testedAt: { knee: 0 },
    rangeDeg: [-45, 35],
  },
  'elbow flexion': {
    joint: 'elbow',
    muscles: 'elbow flexors',
    carriedBelowDeg: 10,
    sense: -1,
    shortDeg: 130,
    longDeg: 0,
    rangeDeg: [0, 140],
  },
  'elbow extension': {
    joint: 'elbow',
    muscles: 'triceps',
    sense: 1,
    shortDeg: 0,
    longDeg: 130,
    rangeDeg: [0, 140],
  },
  'shoulder flexion': {
    joint: 'shoulder',
    muscles: 'shoulder flexors',
    sense: -1,
    shortDeg: 150,
    longDeg: -20,
    rangeDeg: [-20, 160],
    weak: 'shoulder flexion was read at 0° and 45° only',
  },
  'shoulder horizontal adduction': {
    joint: 'shoulder across',
    muscles: 'chest and front shoulder',
    sense: -1,
    shortDeg: 110,
    longDeg: -10,
    rangeDeg: [-10, 110],
    weak: 'no numbers by angle were found for horizontal adduction at the shoulder',
  },
} as const satisfies Readonly<Record<string, Action>>;

export type ActionName = keyof typeof actions;

/** Names in the order of the table. */
export const actionNames = Object.keys(actions) as ActionName[];

/** Whether a name is one of the actions. */
export function isAction(name: string): name is ActionName {
  return Object.hasOwn(actions, name);
}

/** The action of a name, if there is one. */
export function actionNamed(name: string): Action | undefined {
  const table: Readonly<Record<string, Action>> = actions;
  return Object.hasOwn(table, name) ? table[name] : undefined;
}

/** A record with one value an action. */
export function byAction<T>(value: (action: ActionName) => T): Record<ActionName, T> {
  return Object.fromEntries(actionNames.map((action) => [action, value(action)])) as Record<
    ActionName,
    T
  >;
}

/** Whether the joint is so straight that it carries by itself what would ask an action's muscles. */
export function carriesItself(action: ActionName, angle: number): boolean {
  const { carriedBelowDeg }: Action = actions[action];
  return carriedBelowDeg !== undefined && toDegrees(angle) <= carriedBelowDeg;
}
