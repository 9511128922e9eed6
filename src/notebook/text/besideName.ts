/**
 * The name to show for a file that a scenario names: its path put where the scenario's own name ends.
 *
 * @param file the scenario's name: a path, or a git revision and a path ("HEAD:scenarios/x.yaml")
 * @param path from the scenario's folder
 * @returns such as "HEAD:scenarios/athletes/y.yaml"; the same file by another spelling has the same
 * name; never throws
 */
export function besideName(file: string, path: string): string {
  const steps = path.split('/').filter((step) => step !== '.' && step !== '');
  return file.replace(/[^/:]*$/, () => steps.join('/'));
}
