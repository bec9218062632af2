/** Id of the outcome that compares a storage series test by test, where trial.yaml lists none for it. */
export const testsOf = (storage: string): string => `${storage}-tests`;
