/** Sizes that the template sets and the estimate of its pages reckons with. */
export const SIZES = {
  /** Width and height of a sheet, mm. */
  sheet: { a4: [210, 297], letter: [215.9, 279.4] },
  /** Margins, mm. */
  margin: { x: 17, top: 19, bottom: 17 },
  /** Size of running text, pt. */
  text: { roomy: 10.2, close: 9.4, tight: 8.6 },
  /** Between two blocks, in the size of the text. */
  gap: { roomy: 1, close: 0.8, tight: 0.65 },
  /** Between two lines of a paragraph, and small print, in the size of the text. */
  leading: 0.58,
  small: 0.87,
  /** Around the text of a cell, pt. */
  cell: { x: 3, y: 2.6 },
  /** Height of a capital of small print, in its size: that of a line by itself. */
  smallCapital: 0.668,
  /** Between columns; the narrow one of a spread, and its distance from the rule, mm. */
  gutter: 6,
  beside: 46,
  inset: 3,
} as const;
