/** A table of the data folder, for CSV and for the package's schema alike. */
export interface Table {
  /** File name without its ending. */
  readonly name: string;
  readonly title: string;
  readonly columns: readonly Column[];
  readonly rows: readonly (readonly Cell[])[];
}

export interface Column {
  readonly name: string;
  readonly type: 'string' | 'number' | 'integer' | 'date';
  readonly unit: string | null;
  /** What stands in it, one sentence. */
  readonly meaning: string;
}

/** Null: not known, not checked, not measured; never zero. */
export type Cell = string | number | null;
