import { readScenario } from '../../src/notebook/readScenario.ts';
import { formatProblems } from '../../src/notebook/text/problem.ts';

/** Everything a coach would see, as one text. */
export async function shown(text: string): Promise<string> {
  const { problems } = await readScenario('f.yaml', text);
  return formatProblems(problems ?? [], () => text);
}

/** Each problem as: line, [what the carets underline], message, | hint. */
export async function told(text: string): Promise<string[]> {
  const { problems } = await readScenario('f.yaml', text);
  const lines = text.split('\n');
  return (problems ?? []).map(({ at, message, hint }) => {
    const { line = 0, col = 0, endCol } = at ?? {};
    const underlined = lines[line - 1]?.slice(col - 1, (endCol ?? col + 1) - 1);
    return `${line} [${underlined}] ${message}${hint === undefined ? '' : ` | ${hint}`}`;
  });
}
