import { toRadians } from '../numeric/degrees.ts';
import { momentAbout, type PointForce, standardGravity, type Vector, weight } from './forces.ts';
import type { Attachment, ChainLink, Joint, Segment } from './lift.ts';

/** One body segment: length (m), mass (kg, one side or both as the chain needs), centre of mass. */
export interface SegmentBody {
  readonly length: number;
  readonly mass: number;
  /** Share of the length from the proximal (upper) end. */
  readonly centre: number;
}

export type JointAngles = Readonly<Partial<Record<Joint, number>>>;

/** Extension torques by joint, N·m; only the joints of the chain are there. */
export type JointTorques = Readonly<Partial<Record<Joint, number>>>;

/** A mass (kg) fixed to a segment. */
export type AttachedLoad = Attachment & { readonly mass: number };

/** A chain in one posture: where each joint is and which way each segment points. */
export interface Placement {
  readonly links: readonly {
    readonly link: ChainLink;
    readonly body: SegmentBody;
    readonly start: Vector;
    /** Radians from straight up, forward positive. */
    readonly direction: number;
  }[];
}

/**
 * Places a chain outward from its support.
 *
 * Each segment's direction is the one before it turned by its offset and by `turn` × flexion; a segment of length L
 * and direction α ends at start + L·(sin α, cos α).
 *
 * @param base position of the first joint, metres
 * @param supportDirection direction of the fixed segment, radians from straight up
 * @param angles joint angles, radians, flexion positive; a joint not named is straight
 */
export function placeChain(
  chain: readonly ChainLink[],
  segments: Readonly<Record<Segment, SegmentBody>>,
  base: Vector,
  supportDirection: number,
  angles: JointAngles,
): Placement {
  let start = base;
  let direction = supportDirection;
  const links = chain.map((link) => {
    const body = segments[link.segment];
    const straight = toRadians(link.offsetDeg ?? 0);
    direction += straight + link.turn * (angles[link.joint] ?? 0);
    const placed = { link, body, start, direction };
    start = pointOn(placed, body.length, 0);
    return placed;
  });
  return { links };
}

/** Point of a placed segment: `along` metres from its near end and `across` metres square to it. */
export function pointOn(
  placed: { readonly start: Vector; readonly direction: number },
  along: number,
  across: number,
): Vector {
  const sine = Math.sin(placed.direction);
  const cosine = Math.cos(placed.direction);
  return {
    x: placed.start.x + along * sine + across * cosine,
    y: placed.start.y + along * cosine - across * sine,
  };
}

/** Place of an attachment in a placed chain; undefined if the chain lacks the segment. */
export function attachedAt(
  placement: Placement,
  { on, along, across }: Attachment,
): { readonly linkIndex: number; readonly at: Vector } | undefined {
  const linkIndex = placement.links.findIndex(({ link }) => link.segment === on);
  const placed = placement.links[linkIndex];
  return placed && { linkIndex, at: pointOn(placed, along * placed.body.length, across) };
}

/** A force and the place in the chain of the link it acts on. */
export interface LinkForce {
  readonly linkIndex: number;
  readonly force: PointForce;
}

/**
 * Weights of segments and loads, each with the place in the chain from which it hangs.
 *
 * @param gravity m/s²
 */
export function weights(
  placement: Placement,
  loads: readonly AttachedLoad[],
  gravity = standardGravity,
): LinkForce[] {
  const forces: LinkForce[] = [];
  for (const [linkIndex, placed] of placement.links.entries()) {
    const { body, link } = placed;
    const centre = link.near === 'proximal' ? body.centre : 1 - body.centre;
    const at = pointOn(placed, centre * body.length, 0);
    forces.push({ linkIndex, force: weight(body.mass, at, gravity) });
    for (const load of loads) {
      if (load.on !== link.segment) continue;
      const where = pointOn(placed, load.along * body.length, load.across);
      forces.push({ linkIndex, force: weight(load.mass, where, gravity) });
    }
  }
  return forces;
}

/**
 * Torques that muscles must supply to hold a posture, N·m, extension positive, whole body.
 *
 * Generalised force of joint j for forces beyond it: Q_j = turn_j · M(joint j), with M the
 * counterclockwise moment of all forces further out; for weights alone this is ∂V/∂q_j with the
 * other joints held. The required extension torque is −Q_j. Quasi-static: no inertia.
 *
 * @param extra further forces, each on the link it acts on (bands, cables, contacts)
 */
export function requiredTorques(
  placement: Placement,
  loads: readonly AttachedLoad[],
  gravity = standardGravity,
  extra: readonly LinkForce[] = [],
): JointTorques {
  const forces = [...weights(placement, loads, gravity), ...extra];
  const torques: Partial<Record<Joint, number>> = {};
  for (const [index, { link, start }] of placement.links.entries()) {
    let moment = 0;
    for (const { linkIndex, force } of forces)
      if (linkIndex >= index) moment += momentAbout(start, [force]);
    torques[link.joint] = -link.turn * moment;
  }
  return torques;
}

/** Potential energy of segments and loads, joules, zero at the height of the support's origin. */
export function potentialEnergy(
  placement: Placement,
  loads: readonly AttachedLoad[],
  gravity = standardGravity,
): number {
  return weights(placement, loads, gravity).reduce(
    (sum, { force }) => sum - force.force.y * force.at.y,
    0,
  );
}

/** Total mass and centre of mass of the weights that hang from a part of the chain. */
export function massCentre(
  forces: readonly LinkForce[],
  counts: (linkIndex: number) => boolean,
): { readonly mass: number; readonly centre: Vector } {
  let mass = 0;
  let x = 0;
  let y = 0;
  for (const { linkIndex, force } of forces) {
    if (!counts(linkIndex)) continue;
    const m = -force.force.y / standardGravity;
    mass += m;
    x += m * force.at.x;
    y += m * force.at.y;
  }
  return { mass, centre: mass === 0 ? { x: 0, y: 0 } : { x: x / mass, y: y / mass } };
}
