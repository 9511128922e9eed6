/** Columns to print in: those of the terminal, within what stays readable. */
export const width = () => Math.min(Math.max(process.stdout.columns ?? 80, 38), 100);
