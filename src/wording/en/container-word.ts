const KNOWN = new Set(
  `bag bed bottle box cell container crate cup dish envelope flat frame glass jar module packet pan plate plot plug
  pot punnet roll row saucer sponge towel tray trough tub`.split(/\s+/),
);

/**
 * One word for what a sowing physically is, from the author's free text: "a 40-cell tray, half filled"
 * -> "tray", "9 cm pots" -> "pot". "sowing" where no single word can be told.
 */
export function containerWord(container: string | null): string {
  const head =
    (container ?? '').toLowerCase().split(/[,;:(/]| (?:with|of|in|on|from|for|under|lined|filled) /)[0] ?? '';
  const words = (head.match(/\p{L}+/gu) ?? []).map(singular);
  return words.findLast((word) => KNOWN.has(word)) ?? words.at(-1) ?? 'sowing';
}

function singular(word: string): string {
  for (const [ending, end] of [
    [/(?<=s|x|z|ch|sh)es$/, ''],
    [/(?<=[^aeiou])ies$/, 'y'],
    [/(?<=[^s])s$/, ''],
  ] as const) {
    if (ending.test(word)) return word.replace(ending, end);
  }
  return word;
}
