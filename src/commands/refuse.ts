/** A wrong call: one plain line, exit code 2, nothing to work on. */
export function refuse(message: string): [] {
  process.stderr.write(`${message}\n`);
  process.exitCode = 2;
  return [];
}
