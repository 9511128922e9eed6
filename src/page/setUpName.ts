import type { SetUpApart } from '../questions/retest/setUpApart.ts';
import { degrees } from './words.ts';

/** What tells a set-up from others of its action, "right side, hip at 85°"; empty where nothing does. */
export function setUpName({ side, neighbours, score, angleTaken, limbWeight }: SetUpApart): string {
  const sideWords = { left: 'left side', right: 'right side', both: 'both sides' };
  return [
    ...(side === undefined ? [] : [side === 'not stated' ? 'side not stated' : sideWords[side]]),
    ...Object.entries(neighbours).map(([joint, angle]) => `${joint} at ${degrees(angle)}`),
    ...(score === undefined ? [] : [score === 'best' ? 'best trial' : 'mean of trials']),
    ...(angleTaken === undefined ? [] : [`angle taken: ${angleTaken}`]),
    ...(limbWeight === undefined ? [] : [`weight of the limb ${limbWeight}`]),
  ].join(', ');
}

/** An action with what tells its set-up from others, "knee extension, right side". */
export function actionName({
  action,
  apart,
}: {
  readonly action: string;
  readonly apart: SetUpApart;
}): string {
  const name = setUpName(apart);
  return name === '' ? action : `${action}, ${name}`;
}
