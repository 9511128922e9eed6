/**
 * Lifts done with a long barbell, whose empty weight is the least that can be loaded. One-legged
 * squats are left out, because they are as often done with light dumbbells.
 */
export const barLifts: ReadonlySet<string> = new Set([
  'back squat',
  'front squat',
  'box squat',
  'low-bar squat',
  'deadlift',
  'Romanian deadlift',
  'good morning',
  'hip thrust',
  'glute bridge',
  'bench press',
  'close-grip bench press',
  'floor press',
  'overhead press',
]);

/** An empty bar, kg (common practice: the long bar of competition for men). */
export const emptyBar = 20;
