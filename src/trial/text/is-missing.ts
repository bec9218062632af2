const TOKENS = new Set(['', 'n/a', 'na', 'nc', '-', '.', '–', '—', '−']);

/** Whether a cell says that there is no value: empty, `n/a`, `na`, `nc`, `-` or `.`. Never a zero. */
export function isMissing(text: string): boolean {
  return TOKENS.has(text.trim().toLowerCase());
}
