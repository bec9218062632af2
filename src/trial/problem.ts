export type Level = 'error' | 'warning' | 'notice';

/**
 * One mistake, doubt or remark about a person's file. Data first: commands, the site and a forge's
 * checks each print it in their own way.
 */
export interface Problem {
  /** Path as the person knows it, with forward slashes: `content/trials/leek/counts.csv`. */
  readonly file: string;
  /** Counts from 1, as editors do; null where the whole file is meant. */
  readonly line: number | null;
  readonly column: number | null;
  /** Spreadsheet address of the cell, such as `C7`; null outside tables. */
  readonly cell: string | null;
  /** Column heading or YAML path (`outcomes[0].day`); null where the whole file is meant. */
  readonly field: string | null;
  readonly level: Level;
  /** Stable id in kebab-case: `count-above-seeds`. */
  readonly rule: string;
  /** What was found and why it cannot be. */
  readonly message: string;
  /** How to mend it. */
  readonly remedy: string;
}
