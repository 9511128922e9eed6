/** A new scenario with comments: invented values that run as they are. */
export const startingScenario = `# A scenario: one athlete, what was measured, where strength is wanted, and programs to compare.
# Every value here is invented; put in your own. "torqueleaf check FILE" says what is wrong.
title: Stronger in the deep knee range
angles: flexion # how this file writes joint angles: flexion (0 = straight) or included (180 = straight)
athlete:
  code: AB-01 # a pseudonym; keep the key to it elsewhere
  reference: female # body tables: female, male or pooled
  stature: 170 cm
  mass: 65 kg
  training: 3 years
  # lengths: { thigh: 42 cm, shank: 40 cm }    # measured; what is missing comes from stature
  # limits: { ankle dorsiflexion: 32 deg, knee flexion: 130 deg }
tests:
  - action: knee extension # trials of a maximal hold at several angles, one leg
    contraction: isometric
    with: { hip: 85 deg }
    trials: { 40 deg: [115, 120], 60 deg: [160, 165], 80 deg: [172, 170], 100 deg: [140, 137] }
    unit: N m
  - { lift: back squat, to: 110 deg, best: 80 kg } # heaviest single, from straight
target: { action: knee extension, from: 75 deg, to: 100 deg, gain: 8 %, within: 8 weeks }
programs:
  deep squat:
    weeks: 8
    sessions per week: 2
    work: # load: % of the heaviest single over the same range, kg, or 8 RM; tempo: down, hold, up
      - { lift: back squat, from: 0 deg, to: 115 deg, load: 78 %, sets: 4, reps: 6, tempo: 3-0-1, rest: 180 s }
    progress: 1.5 % per week
    deload: { week: 4, sets: half }
  squat to thigh level:
    like: deep squat # the same with changes; places in lists count from 1
    change: { work.1.to: thigh level }
  long holds:
    weeks: 8
    sessions per week: 3
    work:
      - { hold: knee extension, at: 90 deg, effort: 90 %, sets: 4, reps: 5, seconds: 5, rest: 90 s }
cells: # your own calculations; "torqueleaf ask FILE" lists what they may use
  bar to body: = best("back squat", 110 deg) / mass
# notebook: # the report in your own order: text, cells, chart, table by angle, section
#   [{ text: Notes for Monday. }, { cells: [bar to body] }, { section: why }]
`;
