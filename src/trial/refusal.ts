/** Why something was not accepted, in a grower's words, before it is known where it stands. */
export interface Refusal {
  /** Stable id in kebab-case. */
  readonly rule: string;
  /** What was expected and found, and why it cannot be; starts in lower case, no full stop. */
  readonly message: string;
  /** How to mend it; a sentence. */
  readonly remedy: string;
}
