/**
 * A page to be printed as plain data: finished strings and finished drawings, in the order in which they are
 * read. The template sets it and knows nothing of trials; no string in here is ever read as markup.
 */
export interface PrintDocument {
  readonly title: string;
  /** BCP 47. */
  readonly language: string;
  readonly authors: readonly string[];
  /** ISO date written into the file, so that the same data give the same bytes; null: none. */
  readonly date: string | null;
  readonly paper: 'a4' | 'letter';
  readonly turned: boolean;
  readonly density: Density;
  /** At the head of each page, left and right. */
  readonly head: readonly [string, string];
  readonly foot: string;
  /** "Page {page} of {pages}", cut at its numbers. */
  readonly pageOf: readonly [string, string, string];
  /** SVG by name. */
  readonly pictures: Readonly<Record<string, string>>;
  readonly blocks: readonly Block[];
}

/** How closely text is set: the next one is tried where a summary would need a third page. */
export type Density = 'roomy' | 'close' | 'tight';

export type Block =
  | { readonly kind: 'title'; readonly text: string }
  | { readonly kind: 'heading'; readonly level: 2 | 3; readonly text: string }
  | { readonly kind: 'text'; readonly text: string; readonly style: TextStyle }
  | { readonly kind: 'items'; readonly items: readonly string[] }
  | { readonly kind: 'facts'; readonly facts: readonly PrintFact[] }
  | Finding
  | Table
  | Figure
  | { readonly kind: 'spread'; readonly main: readonly Block[]; readonly beside: readonly Block[] }
  | {
      readonly kind: 'columns';
      readonly columns: readonly (readonly Block[])[];
      /** Width of the first column, mm; null: all alike. */
      readonly first: number | null;
    }
  | { readonly kind: 'box'; readonly blocks: readonly Block[]; readonly whole: boolean }
  | { readonly kind: 'contents'; readonly level: 2 | 3 }
  | {
      readonly kind: 'labels';
      readonly labels: readonly (readonly Block[])[];
      readonly columns: number;
      readonly height: number;
    }
  /** What follows stands at the foot of its page. */
  | { readonly kind: 'bottom' }
  | { readonly kind: 'page' };

/** `question`: italic and large; `lead`: large; `label`: small sans; `soft`: the same, paler; `code`: fixed width. */
export type TextStyle = 'plain' | 'question' | 'lead' | 'label' | 'strong' | 'soft' | 'huge';

export interface PrintFact {
  readonly name: string;
  readonly values: readonly string[];
}

export interface Finding {
  readonly kind: 'finding';
  /** Name of the mark's picture, which says no more than the words. */
  readonly mark: string;
  readonly words: string;
  readonly name: string | null;
  readonly sentence: string;
  readonly lead: boolean;
}

export interface Table {
  readonly kind: 'table';
  readonly caption: string | null;
  readonly head: readonly string[];
  /** Where a row ends before its head does, empty boxes follow, as wide as one another. */
  readonly rows: readonly (readonly string[])[];
  /** Width of each column: its content's (`auto`), a share of what is left, or millimetres. */
  readonly widths: readonly Width[];
  /** Columns of figures, set to the right. */
  readonly figures: readonly number[];
  /** `lines`: a hairline under each row; `boxes`: every cell framed, to be written into. */
  readonly rules: 'lines' | 'boxes';
  /** Least height of a row, mm; 0: as its text needs. */
  readonly rowHeight: number;
}

export type Width = 'auto' | { readonly share: number } | { readonly mm: number };

export interface Figure {
  readonly kind: 'figure';
  readonly picture: string;
  /** Text alternative, with the values. */
  readonly alt: string;
  readonly title: string | null;
  readonly caption: string | null;
  /** Width, mm; null: all there is. */
  readonly width: number | null;
  /** A drawing that would be taller is made smaller, mm. */
  readonly tallest: number;
}
