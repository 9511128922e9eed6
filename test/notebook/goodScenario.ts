/** A file that uses everything a file may hold; athlete and numbers are invented. */
export const goodScenario = `title: Stronger in the deep knee range before the snow season
note: Invented athlete and data.
angles: flexion
athlete:
  code: SN-04
  reference: female
  stature: 168 cm
  mass: 63.5 kg
  lengths: { thigh: 41 cm }
  training: 4 years
  limits: { ankle dorsiflexion: 30 deg, knee flexion: 125 deg }
tests:
  - action: knee extension
    contraction: isometric
    date: 2026-09-14
    with: { hip: 85 deg }
    trials: { 40 deg: [118, 121, 116], 60 deg: [163, 158, 166] }
    unit: N m
    score: best
  - lift: back squat
    to: 110 deg
    best: 85 kg
target: { action: knee extension, from: 75 deg, to: 100 deg, gain: 10 %, within: 8 weeks }
limits: { minutes per week: 120 }
machines:
  black leg machine: { load: 40 kg, torque: { 10 deg: 70 N m, 60 deg: 88 N m, 100 deg: 75 N m } }
programs:
  deep squat:
    weeks: 8
    sessions per week: 2
    work:
      - { lift: back squat, from: 0 deg, to: 115 deg, load: 80 %, sets: 4, reps: 6, tempo: 3-0-1, rest: 180 s }
      - { lift: machine knee extension, machine: black leg machine, from: 10 deg, to: 100 deg, load: 8 RM, sets: 3, reps: 8 }
      - { lift: front squat, from: 0 deg, to: 100 deg, reserve: 2, sets: 3, reps: 6, rest: 2 min }
      - { lift: box squat, from: 0 deg, to: 90 deg, load: 70 kg, sets: 3, reps: 6 }
      - { hold: knee extension, at: 90 deg, effort: 90 %, sets: 4, reps: 5, seconds: 5, rest: 60 s }
      - { hold: back squat, at: 100 deg, effort: 90 %, sets: 4, reps: 3, seconds: 5 }
    progress: +2.5 % per week
    deload: { week: 4, sets: half }
  plain:
    weeks: 6
    sessions per week: 3
    work:
      - { hold: knee extension, at: 90 deg, effort: 100 %, sets: 4, reps: 5, seconds: 5 }
    deload:
      - { week: 3, sets: 50 % }
      - { week: 6, sets: 75 % }
`;

/**
 * The good file with some stretches replaced.
 *
 * @throws if a stretch is not there: then the test would test nothing
 */
export function changed(...changes: readonly (readonly [from: string, to: string])[]): string {
  let text = goodScenario;
  for (const [from, to] of changes) {
    if (!text.includes(from)) throw new Error(`not in the good scenario: ${from}`);
    text = text.replace(from, () => to);
  }
  return text;
}
