/**
 * Says why a scenario may not name a file so: names go down from its own folder, step by step.
 *
 * @returns a sentence, or undefined for a path that may be looked up; never throws
 */
export function pathFault(path: string): string | undefined {
  // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for
  if (/[\u0000-\u001f\u007f-\u009f\u2028-\u202e\u2066-\u2069]/.test(path))
    return 'the name of the file holds a sign that cannot be seen';
  if (path.trim() === '') return 'the name of the file is empty';
  if (path.length > mostLetters) return `the name of the file has more than ${mostLetters} letters`;
  if (path.includes('\\')) return `${path} has "\\" in it; write "/" between folders`;
  if (/^(\/|~|[A-Za-z]:)/.test(path))
    return `${path} is no name from the scenario's folder, such as athletes/SN-04.yaml`;
  if (path.split('/').includes('..'))
    return `${path} leads out of a folder; name files in the scenario's folder or in folders below it`;
  return undefined;
}

const mostLetters = 300;
