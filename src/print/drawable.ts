import { familiesWith, numberOf, writable } from './writable.ts';

/** The face that charts name. */
const FACE = 'Atkinson Hyperlegible Next';

/**
 * A chart's SVG in faces of ours. A text is drawn in one face, since the drawing would borrow what that lacks from
 * the machine: the chart's own, or the first that has all of it, as the Hebrew and Arabic ones have Latin as well.
 * A character that does not fit in (as none of ours has it, or two scripts stand in one text) is written as its number.
 */
export function drawable(svg: string): string {
  return svg
    .replace(/ font-family="[^"]*"/g, ` font-family="${FACE}"`)
    .replace(/>([^<]+)</g, (_, text: string) => `>${inOneFace(writable(text))}<`);
}

/** Characters of ASCII, and with them the entities of XML, are in every face. */
function inOneFace(text: string): string {
  const beyond: readonly string[] = text.match(/[^\s -~\p{Default_Ignorable_Code_Point}]/gu) ?? [];
  const [first = [], ...others] = beyond.map(familiesWith);
  const common = first.filter((family) => others.every((families) => families.includes(family)));
  if (beyond.length === 0 || common.includes(FACE)) return text;
  const family = common[0] ?? first[0] ?? FACE;
  const fitting = Array.from(text, (character) =>
    !beyond.includes(character) || familiesWith(character).includes(family) ? character : numberOf(character),
  );
  return `<tspan font-family="${family}">${fitting.join('')}</tspan>`;
}
