/** A mistake in a component that an author placed: the message says it all, so no stack goes with it. */
export class AttributeError extends Error {
  /** What was found and why it cannot be, without the remedy. */
  readonly found: string;
  readonly remedy: string;

  constructor(found: string, remedy: string) {
    super(`${found}. ${remedy}`);
    this.found = found;
    this.remedy = remedy;
    this.stack = this.message;
  }
}
