import { rounded } from '../rounded.ts';

/**
 * A number as English prints it: comma between thousands, point before decimals, typographic minus.
 * Without `digits` up to three digits after the point, none of them a closing zero.
 */
export function number(value: number, digits?: number): string {
  const fixed = rounded(Math.abs(value), digits ?? 3).toFixed(digits ?? 3);
  const [whole = '0', decimals] = (digits === undefined ? String(Number(fixed)) : fixed).split('.');
  const grouped = whole.length > 3 ? whole.replace(/\B(?=(\d{3})+$)/g, ',') : whole;
  const text = decimals === undefined ? grouped : `${grouped}.${decimals}`;
  return value < 0 && /[1-9]/.test(text) ? `−${text}` : text;
}
