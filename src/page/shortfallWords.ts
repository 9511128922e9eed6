import { isSerious } from '../physiology/shortfall.ts';
import type { ProgramResult } from '../run.ts';
import { listInWords, plural } from './words.ts';

/** What of a program cannot be done as written, said where it is written and in the verdict. */

type Shortfall = ProgramResult['state']['shortfalls'][number];

/** The first week in which an exercise falls seriously short, or else at all, if it does. */
function firstShortfall(program: ProgramResult, exercise: number): Shortfall | undefined {
  const own = program.state.shortfalls.filter((shortfall) => shortfall.exercise === exercise);
  return own.find(isSerious) ?? own[0];
}

/** ` Cannot be done as written: …`, to follow an exercise's line; nothing if it can be. */
export function shortfallSentence(program: ProgramResult, exercise: number): string {
  const first = firstShortfall(program, exercise);
  if (!first) return '';
  const { week, done, wanted } = first;
  const short = `${done} of ${plural(wanted, 'repetition')} a set`;
  const isStart = week === startOf(program, exercise);
  const when = isStart ? 'with this load' : `in week ${week}`;
  if (!isSerious(first)) return ` Not quite all can be done: ${when} ${short}.`;
  const why = isStart ? '' : ', because the load rises faster than the strength';
  return ` Cannot be done as written: ${when} ${short}${why}.`;
}

/** The first week of an exercise's phase. */
const startOf = ({ phases }: ProgramResult, exercise: number) =>
  phases.find(({ places }) => places.includes(exercise))?.from ?? 1;

/** The exercises that cannot be done as written: "back squat 2 of 12 repetitions in week 3". */
export function shortfallList(program: ProgramResult): string {
  const parts = program.program.work.flatMap((work, i) => {
    const first = firstShortfall(program, i);
    if (!first || !isSerious(first) || work.kind !== 'lift') return [];
    const since = first.week === startOf(program, i) ? '' : ` in week ${first.week}`;
    return [`${work.lift} ${first.done} of ${plural(first.wanted, 'repetition')}${since}`];
  });
  return listInWords(parts);
}
