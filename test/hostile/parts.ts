/** A scenario file that a stranger might send, and what it tries. */
export interface HostileScenario {
  readonly name: string;
  readonly tries: string;
  /** Made only when it is run: some are ten megabytes. */
  readonly text: () => string;
}

export const title = 'title: Stronger in the deep knee range';
export const body = `${title}
angles: flexion
athlete: { code: A, reference: female, stature: 170 cm, mass: 65 kg, training: 3 years }
tests:
  - { lift: back squat, to: 110 deg, best: 80 kg }
target: { action: knee extension, from: 75 deg, to: 100 deg }
`;
export const squat =
  '{ lift: back squat, from: 0 deg, to: 115 deg, load: 78 %, sets: 4, reps: 6, tempo: 3-0-1, rest: 180 s }';
export const hold =
  '{ hold: knee extension, at: 90 deg, effort: 90 %, sets: 4, reps: 5, seconds: 5, rest: 90 s }';

/** A program whose name is written as YAML wants it. */
export const program = (name: string, work: readonly string[] = [hold], weeks = 8, sessions = 2) =>
  `  ${name}:
    weeks: ${weeks}
    sessions per week: ${sessions}
    work:
${work.map((entry) => `      - ${entry}\n`).join('')}`;
export const plain = `${body}programs:\n${program('holds')}`;
export const many = (count: number, line: (index: number) => string) =>
  Array.from({ length: count }, (_, index) => line(index)).join('');
export const swapped = (from: string, to: string) => {
  if (!plain.includes(from)) throw new Error(`the plain scenario has no ${from}`);
  return plain.replace(from, () => to);
};
export const named = (name: string) =>
  `${body}programs:\n${program(JSON.stringify(name))}${program('b')}`;
export const withCells = (cells: string) => `${plain}cells:\n${cells}`;
export const megabytes = (count: number) => 'x'.repeat(count * 1_000_000);
export const escapes = '\u001b[31mred\u001b]0;owned\u0007\u009b2J\u0000\u007f';
export const overrides = 'safe\u202egpj.exe\u2066\u2069\u200f\u061c';
export const laughs = many(
  9,
  (i) => `l${i + 1}: &l${i + 1} [${Array(9).fill(`*l${i}`).join(', ')}]\n`,
);

export type Row = readonly [name: string, tries: string, text: () => string];
