const shorter: readonly (readonly [string, string])[] = [
  [' head', ''],
  ['biceps femoris', 'biceps f.'],
  ['gastrocnemius medialis', 'gastroc. med.'],
  ['gastrocnemius lateralis', 'gastroc. lat.'],
  ['vastus ', 'v. '],
];

/** A muscle's name where there is no room: what tells it from others within 13 signs. */
export function shortMuscle(name: string): string {
  return shorter.reduce((text, [long, short]) => text.replace(long, short), name);
}
