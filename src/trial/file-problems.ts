import type { Level, Problem } from './problem.ts';
import type { Refusal } from './refusal.ts';

/** Where in a file: see `Problem`. */
export interface Place {
  readonly line: number | null;
  readonly column: number | null;
  readonly cell: string | null;
  readonly field: string | null;
}

/** The whole file, not a line of it. */
export const WHOLE_FILE: Place = { line: null, column: null, cell: null, field: null };

/** Gathers what there is to say about one file while it is read. */
export class FileProblems {
  readonly problems: Problem[] = [];
  readonly file: string;

  /** @param file path as the person knows it */
  constructor(file: string) {
    this.file = file;
  }

  error(place: Place, refusal: Refusal): void {
    this.#add('error', place, refusal);
  }

  warning(place: Place, refusal: Refusal): void {
    this.#add('warning', place, refusal);
  }

  notice(place: Place, refusal: Refusal): void {
    this.#add('notice', place, refusal);
  }

  get hasErrors(): boolean {
    return this.problems.some(({ level }) => level === 'error');
  }

  #add(level: Level, { line, column, cell, field }: Place, { rule, message, remedy }: Refusal): void {
    this.problems.push({ file: this.file, line, column, cell, field, level, rule, message, remedy });
  }
}
