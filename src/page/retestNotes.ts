import type { RetestNote } from '../inference/retest/notes.ts';
import type { JudgedAction } from '../questions/retest/judgeAction.ts';
import { testErrors } from '../tables/testError.ts';
import { actionName } from './setUpName.ts';
import { capital, degrees, listInWords, newtonMetres, percent } from './words.ts';

/** What a verdict rests on and what weakens it, one sentence or two each. */
export function retestNotes(judged: JudgedAction): string[] {
  const { error, correlation, mdcOverError, retest } = judged;
  const size = error.unit === 'share' ? percent(error.amount, 1) : newtonMetres(error.amount);
  const from = {
    own: 'the athlete’s own, from the file',
    borrowed: `borrowed from published tests (${error.kind ?? ''}); measure your own with repeated test days`,
    'own and borrowed':
      'from own repeated days, with a borrowed one behind them while they are few',
  }[error.known];
  const together = correlation
    ? ''
    : ' How far a good day lifts all angles together is not known, so each verdict takes the worse case.';
  const outer = error.outer
    ? ` Outside the middle half of the range it counts ${error.outer.factor} times as much.`
    : '';
  const known =
    mdcOverError < 2.95
      ? ''
      : ` Because it is known only roughly, the MDC of one day against one is ${mdcOverError.toFixed(1)} times the error, not 2.8 times.`;
  return [
    `${capital(actionName(judged))}: typical error of one test day ${size}, ${from}.${outer}${together}${known}`,
    ...retest.notes.flatMap(noteText),
  ];
}

/** A rise by itself below this is not worth a sentence. */
const leastNamed = 0.005;

const anglesText = (angles: readonly number[]) =>
  listInWords(angles.map((angle) => degrees(angle)));

function noteText(note: RetestNote): string[] {
  switch (note.about) {
    case 'one trial':
      return [
        `One trial only ${note.when} the training at ${anglesText(note.angles)}: a slip there cannot be seen.`,
      ];
    case 'unequal trials':
      return [
        `Not the same number of trials before and after at ${anglesText(note.angles)}; the best of more trials is higher by itself${note.flatters === 'both' ? '' : `, here ${note.flatters}`}.`,
      ];
    case 'left out':
      return [
        ...(note.onlyBefore.length > 0
          ? [`Tested only before, left out: ${anglesText(note.onlyBefore)}.`]
          : []),
        ...(note.onlyAfter.length > 0
          ? [`Tested only after, left out: ${anglesText(note.onlyAfter)}.`]
          : []),
      ];
    case 'many angles':
      return [
        `${note.angles} angles were looked at one by one: if nothing had changed, one or more would still stand out with a chance of ${percent(note.chanceOfFalse)}. The two verdicts above are single questions and do not suffer from it.`,
      ];
    case 'picked as weakest':
      if (Math.abs(note.changeByItself) < leastNamed) return [];
      return [
        `The target is where this athlete tested weakest beside the usual curve. Such a spot rises by itself at the next test, here by about ${percent(note.changeByItself)}; without that the gain is ${percent(note.gainLeft)}.`,
      ];
    case 'learning':
      return [
        note.firstEver
          ? 'The test before was the first ever of its kind: part of the change may be learning the test.'
          : 'The test before was hardly practised (under three sessions): part of the change may be learning the test.',
      ];
    case 'borrowed error':
      return note.kind
        ? [
            `The borrowed error rests on ${listInWords(testErrors[note.kind].restsOn.map(({ source }) => source))}${note.unfamiliar ? '; raised by half because the test was hardly practised' : ''}.`,
          ]
        : [];
  }
}
