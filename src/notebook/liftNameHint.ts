import { didYouMean } from './didYouMean.ts';

/**
 * What gyms call some lifts (common usage), with the lifts of the catalogue that are meant or, for
 * a lift that it lacks, the nearest to it.
 */
const tradeNames: Readonly<Record<string, readonly string[]>> = {
  squat: ['back squat', 'front squat', 'low-bar squat', 'box squat'],
  'high-bar squat': ['back squat'],
  'bulgarian split squat': ['rear-foot raised split squat'],
  'bulgarian squat': ['rear-foot raised split squat'],
  lunge: ['split squat'],
  'hack squat': ['leg press', 'belt squat'],
  rdl: ['Romanian deadlift'],
  'single-leg rdl': ['single-leg Romanian deadlift'],
  'stiff-legged deadlift': ['Romanian deadlift'],
  'trap-bar deadlift': ['hex-bar deadlift'],
  'hip bridge': ['glute bridge', 'hip thrust'],
  'back extension': ['45-degree back extension', 'horizontal back extension'],
  hyperextension: ['45-degree back extension', 'horizontal back extension'],
  'leg extension': ['machine knee extension'],
  'knee extension machine': ['machine knee extension'],
  'leg curl': ['seated leg curl', 'lying leg curl'],
  'hamstring curl': ['seated leg curl', 'lying leg curl'],
  nordic: ['Nordic lowering'],
  'nordic curl': ['Nordic lowering'],
  'nordic hamstring curl': ['Nordic lowering'],
  'calf raise': ['standing calf raise', 'seated calf raise', 'single-leg calf raise'],
  'biceps curl': ['standing curl', 'incline curl', 'preacher curl'],
  'barbell curl': ['standing curl'],
  'pull-up': ['chin-up'],
  'military press': ['overhead press'],
  'shoulder press': ['overhead press'],
  'skull crusher': ['lying triceps extension'],
};
/** Of these the catalogue has only something near. */
const lacking: ReadonlySet<string> = new Set(['hack squat', 'lunge', 'pull-up']);

/**
 * Says what to type instead of a lift that is not known: the one that a trade word means, the
 * nearest spelling, those that share a word, or all.
 *
 * @param known the names that would have been right
 * @returns a hint; never throws
 */
export function liftNameHint(written: string, known: readonly string[]): string {
  const word = written.trim().toLowerCase().replace(/s$/, '');
  const trade = Object.keys(tradeNames).find((name) => plain(name) === plain(word));
  const meant = (tradeNames[trade ?? ''] ?? []).filter((name) => known.includes(name));
  if (trade !== undefined && meant.length > 0)
    return lacking.has(trade)
      ? `nearest: ${meant.join(', ')}; or declare it under lifts:`
      : `did you mean ${meant.map((name) => `"${name}"`).join(' or ')}?`;
  const nearest = didYouMean(written, known);
  if (nearest !== undefined) return `did you mean "${nearest}"?`;
  const last = word.split(/\s+/).at(-1) ?? word;
  const alike = known.filter((name) => name.toLowerCase().split(/\s+/).includes(last));
  return alike.length > 0
    ? `known with "${last}": ${alike.join(', ')}`
    : `known: ${known.join(', ')}`;
}

const plain = (name: string): string => name.toLowerCase().replace(/[-\s]+/g, ' ');
