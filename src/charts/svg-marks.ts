import { INK, SMALL, WIDTH } from './chart-theme.ts';

type Attributes = Readonly<Record<string, string | number>>;

/** One element of an SVG drawing, its numbers to a tenth of a unit. */
export function mark(name: 'line' | 'path' | 'circle' | 'rect' | 'text', attributes: Attributes, text = ''): string {
  const all = Object.entries(attributes).map(
    ([key, value]) => ` ${key}="${typeof value === 'number' ? tenth(value) : value}"`,
  );
  return `<${name}${all.join('')}>${text.replaceAll('&', '&amp;').replaceAll('<', '&lt;')}</${name}>`;
}

/** A whole drawing, 420 units wide, in the ink of the text around it. */
export function drawing(height: number, marks: readonly string[]): string {
  return `<svg viewBox="0 0 ${WIDTH} ${tenth(height)}" font-size="${SMALL}" fill="${INK}" stroke="none">${marks.join('')}</svg>`;
}

const tenth = (value: number): string => String(Math.round(value * 10) / 10);
