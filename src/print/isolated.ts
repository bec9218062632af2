const LETTER = String.raw`[\p{Script=Hebrew}\p{Script=Arabic}\p{M}\u060C\u061B\u061F]`;
const BETWEEN = String.raw`[^A-Za-z,;:()\n]*`;
const BRACKET = String.raw`\s*\(${BETWEEN}${LETTER}${BETWEEN}\)`;
const RUN = new RegExp(
  `(?=[\\p{Script=Hebrew}\\p{Script=Arabic}])${LETTER}(?:${BETWEEN}${LETTER})?(?:${BRACKET})*`,
  'gu',
);

/**
 * Words written from right to left keep to themselves (Unicode UAX 9, isolates): a number after a label would
 * else be carried to its other side, and a reader would take it for part of something else.
 */
export const isolated = (text: string): string => text.replace(RUN, '\u2068$&\u2069');
