import type { Lift } from '../mechanics/lift.ts';
import type { LiftWork, Scenario } from '../notebook/scenario.ts';
import type { PlannedExercise } from '../physiology/planProgram.ts';
import type { RigSample, RigUse } from '../physiology/rigUse.ts';
import type { Results } from '../run.ts';
import { rubberModulus } from '../tables/chainsAndBands.ts';
import { degrees, kilograms, listInWords, rangeDegrees } from './words.ts';

/** How a report speaks of chains and bands. */

/** What is on the bar besides its load: ` and chains "x"`; nothing for a plain lift. */
export function rigClause({ chains, bands }: LiftWork): string {
  const named = [
    ...(chains === undefined ? [] : [`chains "${chains}"`]),
    ...(bands === undefined ? [] : [`bands "${bands}"`]),
  ];
  return named.length === 0 ? '' : ` and ${listInWords(named)}`;
}

/** Whether the pull of an entry's bands is only estimated from their rubber. */
export function isRubberEstimate({ bands }: LiftWork, scenario: Scenario): boolean {
  const pull = bands === undefined ? undefined : scenario.bands[bands]?.pull;
  return pull !== undefined && 'rest' in pull;
}

/** What the load comes to at both ends of the range, and where bands are slack or unknown. */
export function feltSentence({ rigUse: use }: PlannedExercise, isEstimate: boolean): string {
  const [first, last] = [use?.samples[0], use?.samples.at(-1)];
  if (!use || !first || !last) return '';
  const felt = ({ angle, added }: RigSample) => {
    const load = use.load + added;
    // A body that hangs may be helped by more than the weight on its belt.
    return `${load < 0 ? `${kilograms(-load)} of help` : kilograms(load)} at ${degrees(angle)}`;
  };
  return ` With everything on, the load comes to ${felt(first)} and ${felt(last)}${isEstimate ? ' (the pull of the bands is a rough estimate)' : ''}.${bandSentence(use)}`;
}

/** Smallest pull that is worth a word, newtons: a twentieth of a kilogram. */
const nothing = 0.5;

/** Where bands are slack, and where their length is beyond what was measured. */
function bandSentence({ bands, samples }: RigUse): string {
  if (!bands) return '';
  const { tensionAt, known } = bands.stretch;
  const [shortest, longest] = known;
  const states: readonly (readonly [string, (length: number) => boolean])[] = [
    ['slack', (length) => tensionAt(length) <= nothing],
    [`longer than is known of them (${metres(longest)})`, (length) => length > longest + 1e-9],
    [
      `shorter than was measured (${metres(shortest)})`,
      (length) => tensionAt(length) > nothing && length < shortest - 1e-9,
    ],
  ];
  return states
    .map(([how, holds]) => {
      const where = stretches(samples, ({ bandLength = 0 }) => holds(bandLength));
      return where.length > 0 ? ` The bands are ${how} at ${listInWords(where)}.` : '';
    })
    .join('');
}

/** Unbroken stretches of a range in which something holds, as angles in words. */
function stretches(
  samples: readonly RigSample[],
  holds: (sample: RigSample) => boolean,
): readonly string[] {
  const found: (readonly [number, number])[] = [];
  for (const [i, sample] of samples.entries()) {
    if (!holds(sample)) continue;
    const before = samples[i - 1];
    const open = before && holds(before) ? found.pop() : undefined;
    found.push([open?.[0] ?? sample.angle, sample.angle]);
  }
  return found.map(([from, to]) => rangeDegrees(from, to));
}

const metres = (length: number) => `${Number(length.toFixed(2))} m`;

/** Everything taken for granted of the chains and bands in use; nothing for plain programs. */
export function rigAssumptions({ scenario, ranking }: Results): string[] {
  const used = ranking.flatMap(({ program }) =>
    program.program.work.flatMap((work, i) => {
      const planned = program.plan.exercises[i];
      return work.kind === 'lift' && planned?.rigUse
        ? [{ work, planned, use: planned.rigUse }]
        : [];
    }),
  );
  if (used.length === 0) return [];
  const items = used.flatMap(({ work, planned, use }) => [
    ...chainsText(work.chains, scenario),
    ...bandsText(work.bands, scenario, use, isOnCable(planned)),
    ...(planned.exercise.kind === 'lift' ? floorText(planned.exercise.range.lift) : []),
  ]);
  return [
    ...new Set(items),
    'Chains and bands pull straight up or down, those on a cable along it. A share of the heaviest single, a repetition maximum or a reserve means the heaviest bar with the same chains or bands on; a single tested with the plain bar says how strong the athlete is but does not stand for it. How often a load can be lifted is read from the usual chart by the share of the bar.',
    'The model gives chains and bands no other merit than where they move the load: pooled claims of an extra gain are weak.',
  ];
}

const isOnCable = ({ exercise }: PlannedExercise) =>
  exercise.kind === 'lift' && exercise.range.lift.resistance.kind === 'cable';

function chainsText(name: string | undefined, { chains }: Scenario): string[] {
  const pair = name === undefined ? undefined : chains[name];
  if (!pair) return [];
  const weight =
    'link' in pair.weight
      ? `weigh what the table of short-link chain says of a ${Number((1000 * pair.weight.link).toFixed(2))} mm link`
      : `weigh ${Number(pair.weight.kgPerMetre.toFixed(2))} kg a metre as written`;
  const cord = pair.cord > 0 ? `, on ${metres(pair.cord)} of light cord` : '';
  return [
    `Chains "${name}": two of ${metres(pair.length)}, one at each end of the bar${cord}; they ${weight}, and the bar carries what is off the floor.`,
  ];
}

function bandsText(
  name: string | undefined,
  { bands }: Scenario,
  use: RigUse,
  onCable: boolean,
): string[] {
  const set = name === undefined ? undefined : bands[name];
  if (!set || !use.bands) return [];
  const { tensionAt, known, longest } = use.bands.stretch;
  const onFloor = set.anchor === 0 ? 'at the floor' : `${metres(set.anchor)} above the floor`;
  const fixed = `fixed ${onCable ? 'at the pulley of the cable' : onFloor}`;
  if ('points' in set.pull)
    return [
      `Bands "${name}", ${fixed}: straight lines between the pulls measured, from ${metres(known[0])} to ${metres(known[1])}; their slopes are carried on, down to slack and up to ${metres(longest)}.`,
    ];
  const [low, high] = rubberModulus.range.map((value) => value / rubberModulus.value);
  const twice = tensionAt(2 * set.pull.rest);
  const pull = (times = 1) => `${Math.round(twice * times)} N`;
  return [
    `Bands "${name}", ${fixed}: an estimate from their rubber, not a measurement. Stretched to twice their length they are taken to pull ${pull()} together, and could as well pull ${pull(low)} or ${pull(high)} (rubber differs fivefold in stiffness). Measure their pull at two lengths.`,
  ];
}

function floorText({ name, aboveFloor }: Lift): string[] {
  return aboveFloor ? [`${name} with chains or bands: ${aboveFloor.assumed}.`] : [];
}
