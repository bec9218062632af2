/** Numbers as an R vector. */
export const rVector = (values: readonly number[]): string => `c(${values.join(',')})`;
