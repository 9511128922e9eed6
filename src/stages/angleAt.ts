import type { AngleAt } from '../notebook/readPlace.ts';
import { bodyOf } from '../physiology/body.ts';
import { angleAtHeight } from '../physiology/heights.ts';

/** Lends the notebook, which knows no science, the model's answer to a height. */
export const angleAt: AngleAt = (subject, lift, height, load, stretch) => {
  const guess = { usual: subject.mass, ...(load === undefined ? {} : { known: load }) };
  return angleAtHeight(lift, bodyOf(subject), height, guess, stretch);
};
