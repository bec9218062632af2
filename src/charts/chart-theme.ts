import type { Config } from 'vega-lite';

/** The one ink: takes the colour of the text around the chart, so that one file serves light, dark and print. */
export const INK = 'currentColor';
/** What open marks are filled with: the page's own `--paper`; without one they stay hollow. */
export const PAPER = 'var(--paper, none)';
export const FACE = "'Atkinson Hyperlegible Next', Verdana, 'Segoe UI', sans-serif";

/** The light scheme of src/styles/tokens.css, for pictures that are shown where no style sheet reaches. */
export const CARD = { paper: '#fbf8f0', ink: '#1d2427', soft: '#4d5553', rule: '#cfc3a8' } as const;

/** Sizes in units of the drawing, which is 420 wide and shown 350 to 480 pixels wide. */
export const WIDTH = 420;
export const TEXT = 14;
export const SMALL = 13;
export const LEADING = 17;
/** Opacity of what is paler than ink on purpose: strips and grid lines, never text or data. */
export const PALE = 0.1;

/** Vega-Lite configuration of every chart: hairlines and small print in ink, nothing animated or framed. */
export const chartTheme: Config = {
  aria: false,
  background: 'transparent',
  autosize: { type: 'none' },
  view: { stroke: null, fill: null },
  axis: {
    domain: false,
    grid: false,
    gridColor: INK,
    gridOpacity: PALE,
    tickColor: INK,
    tickSize: 5,
    labelColor: INK,
    labelFontSize: SMALL,
    labelPadding: 4,
    labelOverlap: false,
    labelFlush: false,
    titleColor: INK,
    titleFontSize: SMALL,
    titleFontWeight: 'normal',
    title: null,
  },
  text: { color: INK, fontSize: TEXT, align: 'left', baseline: 'alphabetic', lineHeight: LEADING },
  rule: { color: INK, strokeWidth: 1 },
  line: { strokeJoin: 'round' },
  point: { strokeWidth: 2, opacity: 1 },
};
