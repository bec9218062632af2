/** Where a command writes: results to `out`, everything else to `err`. */
export interface Terminal {
  out(text: string): void;
  err(text: string): void;
  /** `err` is a terminal that a person watches: progress may be shown. */
  readonly terminal: boolean | undefined;
}
