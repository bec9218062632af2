import type { Problem } from './problem.ts';
import { problemText } from './problem-text.ts';

/**
 * Mistakes in a person's files, in the words that `check` prints. Lists every error, not only the
 * first; warnings and notices are left to `check`. Carries the place of the first error as Astro
 * prints it and no stack: where our code noticed is of no use to the reader.
 */
export class DataError extends Error {
  override readonly name = 'DataError';
  readonly problems: readonly Problem[];
  readonly loc: {
    readonly file: string;
    readonly line: number | undefined;
    readonly column: number | undefined;
  } | null;

  /** @param problems of any level; only errors are kept */
  constructor(problems: readonly Problem[]) {
    const errors = problems.filter(({ level }) => level === 'error');
    super(errors.map(problemText).join('\n'));
    const first = errors[0];
    this.problems = errors;
    this.loc = first ? { file: first.file, line: first.line ?? undefined, column: first.column ?? undefined } : null;
    delete this.stack;
  }
}
