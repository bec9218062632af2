import { rounded } from '../rounded.ts';

/**
 * A number as German prints it: comma before decimals, no-break space between thousands from five figures
 * on, typographic minus. Without `digits` up to three digits after the comma, none of them a closing zero.
 */
export function number(value: number, digits?: number): string {
  const fixed = rounded(Math.abs(value), digits ?? 3).toFixed(digits ?? 3);
  const [whole = '0', decimals] = (digits === undefined ? String(Number(fixed)) : fixed).split('.');
  const grouped = whole.length > 4 ? whole.replace(/\B(?=(\d{3})+$)/g, '\u00A0') : whole;
  const text = decimals === undefined ? grouped : `${grouped},${decimals}`;
  return value < 0 && /[1-9]/.test(text) ? `−${text}` : text;
}
