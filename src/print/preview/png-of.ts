import { Resvg } from '@resvg/resvg-js';
import { faces } from '../faces.ts';

/** An SVG as PNG, its texts in the faces of the site and in none of the machine's: the same bytes everywhere. */
export function pngOf(svg: string): Uint8Array<ArrayBuffer> {
  const font = {
    loadSystemFonts: false,
    fontFiles: faces().map(({ path }) => path),
    defaultFontFamily: 'Atkinson Hyperlegible Next',
  };
  return new Uint8Array(new Resvg(svg, { font }).render().asPng());
}
