/** Bytes of a scenario together with the files it includes; more is refused before it is parsed. */
export const mostBytes = 1_000_000;
