import fc from 'fast-check';

export type Files = ReadonlyMap<string, Uint8Array>;

/** What people and programs leave in files by mistake, and what someone might leave there on purpose. */
const ODD_CELLS = [
  '', '0', '-1', '1e309', '-0', 'NaN', 'Infinity', '99999999999999999999', '0.30000000000000004', '~20', '20+', '18-20', '3/4/26',
  '2026-02-30', '2026-04-31T00:00', '20 %', '1,5', '1.234,5', '#REF!', '=1+1', '@SUM(A1)', 'NC', 'n/a', '−3', '１２', '\u00A05', '"', '""', "'",
  '<script>alert(1)</script>', '{{x}}', '${x}', '../../etc/passwd', '\u202Eabc', '🌱🌱', 'a\u0000b', 'null', '[]', '{}', '!!js/function', '&a', '*a', 'toString', '__proto__', 'constructor',
]; // prettier-ignore

const text = (bytes: Uint8Array) => new TextDecoder('latin1').decode(bytes); // byte for byte
const bytesOf = (content: string) => Uint8Array.from(content, (character) => character.charCodeAt(0) & 0xff);
const utf8 = (content: string) => text(new TextEncoder().encode(content));

type Change = (content: string, draw: (below: number) => number) => string;

const atLine = (change: (lines: string[], index: number, draw: (below: number) => number) => void): Change =>
  (content, draw) => {
    const lines = content.split('\n');
    change(lines, draw(lines.length), draw);
    return lines.join('\n');
  }; // prettier-ignore

const atCell = (change: (cell: string, draw: (below: number) => number) => string): Change =>
  atLine((lines, index, draw) => {
    const cells = (lines[index] ?? '').split(/([,;\t:])/);
    const at = 2 * draw(Math.ceil(cells.length / 2));
    cells[at] = change(cells[at] ?? '', draw);
    lines[index] = cells.join('');
  });

const odd = (draw: (below: number) => number) => utf8(ODD_CELLS[draw(ODD_CELLS.length)] ?? '');

/** Small changes to a file, in its bytes read as latin-1. */
const CHANGES: readonly Change[] = [
  atCell((_, draw) => odd(draw)),
  atCell((_, draw) => String(draw(2000) - 100)),
  atCell((cell, draw) => cell.replace(/^\d+$/, (number) => String(Math.max(0, Number(number) + draw(5) - 2)))),
  atCell((cell) => cell + cell),
  atCell((cell, draw) => cell.replace(/\d/, String(draw(10)))),
  atLine((lines, index) => lines.splice(index, 1)),
  atLine((lines, index) => lines.splice(index, 0, lines[index] ?? '')),
  atLine((lines, index, draw) => {
    const other = draw(lines.length);
    [lines[index], lines[other]] = [lines[other] ?? '', lines[index] ?? ''];
  }),
  atLine((lines, index, draw) => (lines[index] = ' '.repeat(draw(5)) + (lines[index] ?? '').trimStart())),
  atLine((lines, index, draw) => (lines[index] += [',', ';', '\t', ':', ' #', '"', "'"][draw(7)] ?? '')),
  (content, draw) => content.slice(0, draw(content.length + 1)),
  (content, draw) => {
    const at = draw(content.length + 1);
    return content.slice(0, at) + String.fromCharCode(draw(256)) + content.slice(at + draw(2));
  },
  (content) => content.replaceAll('\n', '\r\n'),
  (content) => content.replaceAll(',', ';'),
  (content) => `\u00EF\u00BB\u00BF${content}`,
  (content) => `\u00FF\u00FE${[...content].map((character) => `${character}\u0000`).join('')}`,
  (content, draw) => content.replaceAll(/\b\d+\b/g, (number) => (draw(12) === 0 ? '0' : number)),
  () => '',
];

/** Some of the files of a trial with a few of these changes, one now and then taken away or under another name. */
export const mutatedFiles = (trials: readonly Files[]): fc.Arbitrary<Files> =>
  fc
    .record({
      trial: fc.nat(trials.length - 1),
      seeds: fc.array(fc.integer({ min: 1, max: 2 ** 31 - 1 }), { minLength: 1, maxLength: 4 }),
    })
    .map(({ trial, seeds }) => {
      const files = new Map(trials[trial]);
      for (const seed of seeds) changeOne(files, drawsOf(seed));
      return Object.assign(files, { [fc.toStringMethod]: () => written(files) });
    });

/** As text, so that somebody can see what was found. */
const written = (files: Files): string => [...files].map(([name, bytes]) => `== ${name}\n${text(bytes)}`).join('\n');

function changeOne(files: Map<string, Uint8Array>, draw: (below: number) => number): void {
  const names = [...files.keys()];
  const name = names[draw(names.length)];
  const content = name === undefined ? undefined : files.get(name);
  if (name === undefined || content === undefined) return;
  const kind = draw(30);
  if (kind === 0) files.delete(name);
  else if (kind === 1) files.set(names[draw(names.length)] ?? name, content);
  else files.set(name, bytesOf((CHANGES[draw(CHANGES.length)] ?? ((same: string) => same))(text(content), draw)));
}

/** Whole numbers below a bound from a seed: what is found can be found again. */
function drawsOf(seed: number): (below: number) => number {
  let state = seed;
  return (below) => {
    state = (Math.imul(state, 48271) >>> 0) % 2147483647 || 1;
    return below <= 0 ? 0 : state % below;
  };
}
