/** A mistake in a component that an author placed: the message says it all, so no stack goes with it. */
export function wrongAttribute(message: string): Error {
  const error = new Error(message);
  error.stack = message;
  return error;
}
