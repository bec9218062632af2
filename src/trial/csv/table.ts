import type { FileProblems, Place } from '../file-problems.ts';
import type { Separator } from './find-separator.ts';

/** A heading as matched: lower case, single blanks, unit taken off. */
export interface Heading {
  /** `scale step` */
  readonly name: string;
  /** As written, unit taken off: `Scale step`. */
  readonly label: string;
  /** What stood in brackets, or null. */
  readonly unit: string | null;
  readonly index: number;
  readonly place: Place;
}

export interface TableRow {
  /** Line of the file where the row begins. */
  readonly line: number;
  /** Cells as written. */
  readonly cells: readonly string[];
  /** The row cannot be told apart into columns and was reported. */
  readonly broken: boolean;
  /** The row ends before the last column: spreadsheets leave empty cells at the end out. */
  readonly short: boolean;
  /** Columns whose cell was refused and reported, whatever belongs there. */
  readonly refused: ReadonlySet<number>;
  place(heading: Heading): Place;
}

/** A CSV file as text: headings and rows without blank ones. */
export interface Table {
  /** Name within the trial's folder: `counts.csv`. */
  readonly name: string;
  readonly report: FileProblems;
  readonly headings: readonly Heading[];
  readonly rows: readonly TableRow[];
  readonly encoding: string;
  readonly separator: Separator;
}
