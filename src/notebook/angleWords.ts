import type { Scenario } from './scenario.ts';

type Convention = Scenario['convention'];

const depthWords =
  /\b(parallel|half|quarter|full|deep|depth|bottom|below|above|atg|ass[ -]to[ -](grass|floor))\b/i;

/**
 * Whether a text names a depth, as in "below parallel", and gives no number; never throws.
 */
export const isDepthWord = (text: string): boolean => !/\d/.test(text) && depthWords.test(text);

/** Whether a text means a height instead of an angle: thigh level, a box or pins; never throws. */
export const isHeightText = (text: string): boolean =>
  /^\s*(thighs? level|box|pins?)\b/i.test(text);

/**
 * Writes an example of an angle in a file's convention: 75 deg of flexion is 105 deg included.
 *
 * @param flexion as in "75 deg"; other texts are returned as they are
 * @param convention undefined if the file does not say: the example stays in flexion
 * @returns the text to show; never throws
 */
export function angleExample(flexion: string, convention: Convention | undefined): string {
  const degrees = /^(\d+) deg$/.exec(flexion)?.[1];
  if (convention !== 'included' || degrees === undefined) return flexion;
  return `${180 - Number(degrees)} deg`;
}
