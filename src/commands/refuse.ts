import { printableLines } from './printable.ts';

/** A wrong call: one plain line, exit code 2, nothing to work on. */
export function refuse(message: string): [] {
  process.stderr.write(`${printableLines(message)}\n`);
  process.exitCode = 2;
  return [];
}
