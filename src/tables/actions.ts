/** Joint actions the model can forecast, by the joint they turn. */
export const actions = { 'knee extension': 'knee' } as const;

export type ActionName = keyof typeof actions;
