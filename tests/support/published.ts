/** Data of published worked examples, with their sources. */

/** Darwin's maize, heights in inches, crossed and self-fertilised, in pairs: Fisher (1935); read in R datasets (HistData). */
export const maize = {
  cross: [23.5, 12, 21, 22, 19.125, 21.5, 22.125, 20.375, 18.25, 21.625, 23.25, 21, 22.125, 23, 12],
  self: [17.375, 20.375, 20, 20, 18.375, 18.625, 18.625, 15.25, 16.5, 18, 16.25, 18, 12.75, 15.5, 18],
};

/** Extra hours of sleep: Student (1908); R's `sleep`. */
export const sleep = {
  one: [0.7, -1.6, -0.2, -1.2, -0.1, 3.4, 3.7, 0.8, 0, 2],
  two: [1.9, 0.8, 1.1, 0.1, -0.1, 4.4, 5.5, 1.6, 4.6, 3.4],
};

export const minus = (a: readonly number[], b: readonly number[]): number[] =>
  a.map((value, index) => value - (b[index] ?? NaN));
