import { mostBytes } from '../notebook/text/mostBytes.ts';
import type { Beside } from '../notebook/text/source.ts';
import { git } from './git.ts';
import { pathFault } from './pathFault.ts';

/**
 * Reads files that a scenario of a git revision names, from the same revision. Links are refused: what
 * they lead to need not be in the revision at all.
 *
 * @param asked the scenario as git takes it: "HEAD~1:scenarios/x.yaml", "HEAD:./x.yaml", ":x.yaml"
 * @param folder where git is run
 * @returns gives a text, or in one sentence why it cannot; never throws
 */
export const besideInRevision =
  (asked: string, folder: string): Beside =>
  (path) => {
    const fault = pathFault(path);
    if (fault !== undefined) return { fault };
    const whole = asked.replace(/[^/:]*$/, () => path.replace(/^(\.?\/)+/, ''));
    const kind = kindOf(whole, folder);
    if (kind === undefined) return { fault: `there is no file ${path} in this revision` };
    if (kind === '040000') return { fault: `${path} is a folder; name a file in it` };
    if (!kind.startsWith('100')) return { fault: `${path} is no ordinary file in this revision` };
    const found = git(['cat-file', 'blob', whole], folder, mostBytes);
    if ('text' in found) return found;
    return found.code === 'ENOBUFS'
      ? { fault: `${path} is larger than ${mostBytes / 1e6} MB` }
      : { fault: `${path} cannot be read from this revision` };
  };

/** Git's six digits for a file (100…), a folder (040000) or a link (120000); undefined if there is none. */
function kindOf(whole: string, folder: string): string | undefined {
  const [, above = '', name = ''] = /^(.*[/:])([^/:]+)$/s.exec(whole) ?? [];
  const [, staged] = /^:(?:[0-3]:)?(.*)$/s.exec(whole) ?? [];
  const isBeneath = staged?.startsWith('.') ?? false;
  const args =
    staged === undefined
      ? ['ls-tree', '--full-tree', '--', above, name]
      : ['ls-files', '--stage', '--', `:(literal${isBeneath ? '' : ',top'})${staged}`];
  const found = git(args, folder, mostBytes);
  return 'text' in found ? /^\d{6}(?= )/.exec(found.text)?.[0] : undefined;
}
