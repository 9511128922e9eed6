import { printable } from '../notebook/text/problem.ts';

/** Text with line breaks; a scenario's names and texts may hold commands to the terminal. */
export const printableLines = (text: string) => text.split('\n').map(printable).join('\n');
