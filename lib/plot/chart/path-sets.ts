/** The data sets whose rows are finished paths over the plot. */
export const pathSets = ['bands', 'start', 'lines'] as const;

/** One of them. */
export type PathSet = (typeof pathSets)[number];
