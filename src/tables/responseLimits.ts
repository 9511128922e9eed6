/**
 * Least and most of a response that a file takes, shares of the forecast gains: retests give no more
 * and no less than this, drawn toward 100 % as they are (working values).
 */
export const responseLimits = { least: 0.2, most: 2.5 } as const;
