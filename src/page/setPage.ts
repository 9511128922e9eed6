import type { Written } from '../notebook/text/writeValue.ts';
import type { Change } from '../questions/changes.ts';
import { answerBlocks, unheaded } from './changePage.ts';
import type { Report } from './report.ts';
import { listInWords } from './words.ts';

/**
 * What writing one value changed. No headings.
 *
 * @param scenario its name; a value may stand in a file that it includes
 * @param change left out where there is no answer before or after
 */
export function setPage(
  { place, before, after, line, alike, file, isSame }: Written,
  scenario: string,
  change?: Change,
): Report {
  const where = `line ${line}${file === scenario ? '' : ` of ${file}`}`;
  if (isSame) return unheaded([{ kind: 'text', text: `${place} is ${after} already (${where}).` }]);
  const also = alike.length > 0 ? ` It changes too what is like it: ${listInWords(alike)}.` : '';
  return unheaded([
    { kind: 'text', text: `${place}: ${before} → ${after} (${where}).${also}` },
    ...(change ? answerBlocks(change) : []),
  ]);
}
