import { cellText } from '../notebook/formula/cellText.ts';
import type { Said } from '../notebook/text/differences.ts';
import type { Cause, Trial, Watched } from '../questions/compare.ts';
import { listInWords, plural, signedPoints } from './words.ts';

/**
 * Which place alone moves an answer, in one or two sentences.
 *
 * @param places how many differ
 */
export function causeText(cause: Cause, places: number): string {
  const { watched, idle, first } = cause;
  const tried = idle.length + (first ? 1 : 0);
  const left = places - tried;
  if (!first) {
    const which = left > 0 ? `the first ${tried} of the ` : 'the ';
    return `${changeText(watched)}, but none of ${which}${places} places that differ moves it alone.${idleText(idle)}`;
  }
  const { place, a, b } = first.difference;
  const later = left > 0 ? ` Not tried: ${plural(left, 'later place')}.` : '';
  return `${changeText(watched)}; ${place} alone (${said(a)} → ${said(b)}) makes ${effectText(watched, first)}.${idleText(idle)}${later}`;
}

function changeText(watched: Watched): string {
  const { kind, name, a, b } = watched;
  return kind === 'gain'
    ? `The target gain of "${name}" changes by ${signedPoints(b - a)} points`
    : `The cell "${name}" goes from ${cellText(a)} to ${cellText(b)}`;
}

function effectText(watched: Watched, { gain, cell }: Trial): string {
  if (watched.kind === 'cell') return cell ? `it ${cellText(cell)}` : '';
  return gain === undefined ? '' : `${signedPoints(gain - watched.a)} of them`;
}

/** Places tried before without effect, and those that cannot be changed alone. */
function idleText(idle: readonly Trial[]): string {
  const isIdle = ({ gain, cell }: Trial) => gain !== undefined || cell !== undefined;
  const without = idle.filter(isIdle).map(({ difference }) => difference.place);
  const alone = idle.filter((trial) => !isIdle(trial)).map(({ difference }) => difference.place);
  return [
    without.length > 0 ? ` Tried alone without effect: ${listInWords(without)}.` : '',
    alone.length > 0 ? ` Cannot be changed alone: ${listInWords(alone)}.` : '',
  ].join('');
}

const said = (side?: Said) => side?.text ?? 'not there';
