import type { ParseTree } from './parseFormula.ts';

let loaded: Promise<ParseTree> | undefined;

/**
 * mathjs's parser, loaded at the first formula: a file without one never waits for it. Its build
 * for plain numbers is the smallest that has the parser.
 *
 * @returns the parser; rejects only if the installation is broken
 */
export function loadParser(): Promise<ParseTree> {
  loaded ??= import('mathjs/number').then(
    ({ parse }) =>
      (text: string) =>
        parse(text),
  );
  return loaded;
}
