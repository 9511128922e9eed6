/** Postures of a lift as figures of characters, side by side, so that a reader sees what is assumed. */

import type { Lift } from '../mechanics/lift.ts';
import type { Placement } from '../mechanics/linkage.ts';
import { toRadians } from '../numeric/degrees.ts';

interface Point {
  readonly x: number;
  readonly y: number;
}

interface Stroke {
  readonly from: Point;
  readonly to: Point;
  /** What it is drawn with; left out where the slope of the stroke chooses. */
  readonly sign?: string;
}

interface Mark {
  readonly at: Point;
  readonly sign: string;
}

/** What is drawn of one posture, later things over earlier ones. */
interface Sketch {
  readonly strokes: readonly Stroke[];
  readonly marks: readonly Mark[];
}

/** Widest drawing of all figures together, columns, unless told otherwise. */
export const usualColumns = 38;
const gap = 2;
// A character is about twice as high as it is wide.
const rowPerColumn = 2;
// Two figures of a standing body stay as high as they are readable.
const mostRows = 17;
// Shoulder to the middle of the head, and the length of support shown, metres.
const neckLength = 0.18;
const supportLength = 0.3;
// From the middle of a joint down to what it rests on, metres.
const underside = 0.09;

/**
 * Draws postures of a lift side by side: `o` joints, `O` the head, `#` the load (hanging on `:`),
 * `=` what holds the chain, `_` the ground; segments by their slope.
 *
 * @param placements postures in the order in which they stand, left to right
 * @param columns widest the drawing may be
 */
export function drawFigures(
  lift: Lift,
  placements: readonly Placement[],
  columns = usualColumns,
): string {
  const sketches = placements.map((placement) => sketch(lift, placement));
  const each = Math.floor((columns - gap * (sketches.length - 1)) / Math.max(sketches.length, 1));
  const frame = frameOf(sketches, each);
  const figures = sketches.map((one) => raster(one, frame));
  const rows = Array.from({ length: frame.rows }, (_, row) =>
    figures
      .map((figure) => (figure[row] ?? '').padEnd(frame.columns))
      .join(' '.repeat(gap))
      .trimEnd(),
  );
  return rows.join('\n');
}

function sketch(lift: Lift, placement: Placement): Sketch {
  const body = placement.links.map((placed) => ({ from: placed.start, to: onLink(placed, 1, 0) }));
  const load = loadMarks(lift, placement);
  const top = head(lift, placement);
  const joints = body.map(({ from }) => ({ at: from, sign: 'o' }));
  return {
    strokes: [...supportStrokes(lift, body), ...load.strokes, ...top.strokes, ...body],
    marks: [...joints, ...top.marks, ...load.marks],
  };
}

type PlacedLink = Placement['links'][number];

/** Place on a link: share of its length from its near end, and metres square to it. */
function onLink({ start, direction, body }: PlacedLink, along: number, across: number): Point {
  const [sine, cosine] = [Math.sin(direction), Math.cos(direction)];
  return {
    x: start.x + along * body.length * sine + across * cosine,
    y: start.y + along * body.length * cosine - across * sine,
  };
}

/** The head on its neck, beyond the shoulder end of the trunk or of what holds the arms. */
function head(lift: Lift, { links }: Placement): Sketch {
  const trunk = links.find(({ link }) => link.segment.startsWith('trunk'));
  const first = links[0];
  if (trunk) {
    const upward = trunk.link.near === 'distal';
    return headFrom(onLink(trunk, upward ? 1 : 0, 0), trunk, upward ? 1 : -1);
  }
  if (first?.link.joint !== 'shoulder') return { strokes: [], marks: [] };
  return headFrom(first.start, { direction: toRadians(lift.supportDirectionDeg) }, 1);
}

function headFrom(shoulder: Point, trunk: { readonly direction: number }, side: 1 | -1): Sketch {
  const reach = side * neckLength;
  const at = {
    x: shoulder.x + reach * Math.sin(trunk.direction),
    y: shoulder.y + reach * Math.cos(trunk.direction),
  };
  return { strokes: [{ from: shoulder, to: at }], marks: [{ at, sign: 'O' }] };
}

/** Where the load acts: at its place, at the end of its strap, or on a machine at the limb's end. */
function loadMarks({ resistance }: Lift, { links }: Placement): Sketch {
  const last = links[links.length - 1];
  if (!last) return { strokes: [], marks: [] };
  if (resistance.kind === 'machine torque')
    return { strokes: [], marks: [{ at: onLink(last, 1, 0), sign: '#' }] };
  const carrier = links.find(({ link }) => link.segment === resistance.on) ?? last;
  const point = onLink(carrier, resistance.along, resistance.across);
  const below = resistance.kind === 'mass' ? (resistance.below ?? 0) : 0;
  const at = { x: point.x, y: point.y - below };
  const strokes = below > 0 ? [{ from: point, to: at, sign: ':' }] : [];
  return { strokes, marks: [{ at, sign: '#' }] };
}

/** Ground under feet, a bar over hanging hands, else a piece of what holds the chain. */
function supportStrokes(lift: Lift, body: readonly Stroke[]): Stroke[] {
  const base = body[0]?.from ?? { x: 0, y: 0 };
  const level = (y: number, sign: string): Stroke => ({
    from: { x: base.x - supportLength, y },
    to: { x: base.x + supportLength, y },
    sign,
  });
  if (lift.support === 'feet') return [level(0, '_')];
  if (lift.support === 'ball of foot') return [level(base.y, '_')];
  if (lift.support === 'bar') return [level(base.y, '=')];
  const foot = body[body.length - 1]?.to;
  // Shoulders on a bench and feet on the ground: the chain starts in the air.
  if (lift.contact && foot)
    return [
      { ...level(foot.y - underside, '_'), to: { x: foot.x, y: foot.y - underside } },
      level(base.y - underside, '='),
    ];
  const direction = toRadians(lift.supportDirectionDeg);
  const held = {
    x: base.x - supportLength * Math.sin(direction),
    y: base.y - supportLength * Math.cos(direction),
  };
  return [{ from: held, to: base, sign: '=' }];
}

interface Frame {
  readonly columns: number;
  readonly rows: number;
  /** Metres a column, and the left and upper edge. */
  readonly scale: number;
  readonly left: number;
  readonly top: number;
}

/** One scale for all figures, so that their sizes and places can be compared. */
function frameOf(sketches: readonly Sketch[], columns: number): Frame {
  const points = sketches.flatMap(({ strokes, marks }) => [
    ...strokes.flatMap(({ from, to }) => [from, to]),
    ...marks.map(({ at }) => at),
  ]);
  const xs = points.map(({ x }) => x);
  const ys = points.map(({ y }) => y);
  const [left, right, top, bottom] = [
    Math.min(...xs),
    Math.max(...xs),
    Math.max(...ys),
    Math.min(...ys),
  ];
  const scale = Math.max(
    (right - left) / (columns - 1),
    (top - bottom) / (rowPerColumn * (mostRows - 1)),
  );
  const cells = (metres: number) => Math.round(metres / scale) + 1;
  const rows = Math.round((top - bottom) / (rowPerColumn * scale)) + 1;
  return { columns: Math.min(columns, cells(right - left)), rows, scale, left, top };
}

function raster({ strokes, marks }: Sketch, frame: Frame): string[] {
  const { scale, left, top } = frame;
  const cells = Array.from({ length: frame.rows }, () =>
    Array.from({ length: frame.columns }, () => ' '),
  );
  const put = ({ x, y }: Point, sign: string) => {
    const row = cells[Math.round((top - y) / (rowPerColumn * scale))];
    const column = Math.round((x - left) / scale);
    if (row && column < row.length) row[column] = sign;
  };
  for (const { from, to, sign } of strokes) {
    const columns = Math.abs(to.x - from.x) / scale;
    const lines = Math.abs(to.y - from.y) / (rowPerColumn * scale);
    const drawn = sign ?? slopeSign(from, to);
    // A slanted sign spans about two columns, so that slopes stay thin.
    const steps = Math.max(
      1,
      Math.round(Math.max(lines, /[/\\]/.test(drawn) ? columns / 2 : columns)),
    );
    for (let step = 0; step <= steps; step++) {
      const share = step / steps;
      put({ x: from.x + share * (to.x - from.x), y: from.y + share * (to.y - from.y) }, drawn);
    }
  }
  for (const { at, sign } of marks) put(at, sign);
  return cells.map((row) => row.join(''));
}

/** Character nearest to a stroke's slope. */
function slopeSign(from: Point, to: Point): string {
  const rising = Math.atan2(to.y - from.y, to.x - from.x);
  const eighths = Math.round((4 * rising) / Math.PI + 8) % 4;
  return ['-', '/', '|', '\\'][eighths] ?? '-';
}
