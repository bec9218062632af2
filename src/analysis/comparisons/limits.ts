/** Both ends of a range, known. */
export interface Limits {
  readonly lower: number;
  readonly upper: number;
}
