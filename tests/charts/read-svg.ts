/** One drawn element of a chart: what it is, in which layer, where, and what it says. */
export interface Drawn {
  readonly tag: string;
  /** Name of the chart's layer: `dots`, `labels`; empty for axes. */
  readonly layer: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly x: number;
  readonly y: number;
  readonly lines: readonly string[];
}

const TAG = /<(\/?)([\w:]+)((?:\s+[\w:-]+="[^"]*")*)\s*(\/?)>|([^<]+)|(<)/g;
const ENTITIES: Readonly<Record<string, string>> = { '&lt;': '<', '&gt;': '>', '&amp;': '&', '&quot;': '"' };
const plain = (text: string) => text.replace(/&\w+;/g, (entity) => ENTITIES[entity] ?? entity);

/** Reads an SVG as XML does: tags must nest, attributes must be quoted, and no stray "<" may stand anywhere. */
export function readSvg(svg: string): { root: Readonly<Record<string, string>>; drawn: Drawn[] } {
  const open: {
    tag: string;
    layer: string;
    x: number;
    y: number;
    attributes: Record<string, string>;
    lines: string[];
  }[] = [];
  const drawn: Drawn[] = [];
  let root: Record<string, string> = {};
  for (const [, close, tag = '', given = '', selfClosing, text, stray] of svg.matchAll(TAG)) {
    if (stray) throw new Error('a "<" that opens no tag');
    if (text !== undefined) {
      open.at(-1)?.lines.push(plain(text));
      continue;
    }
    if (close) {
      const ended = open.pop();
      if (ended?.tag !== tag) throw new Error(`<${ended?.tag}> is closed by </${tag}>`);
      if (tag === 'tspan') open.at(-1)?.lines.push(...ended.lines);
      else if (tag !== 'g' && tag !== 'svg') drawn.push(ended);
      continue;
    }
    const attributes = Object.fromEntries(
      [...given.matchAll(/([\w:-]+)="([^"]*)"/g)].map(([, name = '', value = '']) => [name, plain(value)]),
    );
    const [, dx = '0', dy = '0'] = /translate\((-?[\d.e-]+),(-?[\d.e-]+)\)/.exec(attributes['transform'] ?? '') ?? [];
    const parent = open.at(-1);
    const layer = /(\w+?)_(?:marks|pathgroup)/.exec(attributes['class'] ?? '')?.[1] ?? parent?.layer ?? '';
    const element = {
      tag,
      layer,
      attributes,
      x: (parent?.x ?? 0) + Number(dx),
      y: (parent?.y ?? 0) + Number(dy),
      lines: [],
    };
    if (tag === 'svg') root = attributes;
    if (selfClosing && tag !== 'g') drawn.push(element);
    else if (selfClosing) continue;
    else open.push(element);
  }
  if (open.length > 0) throw new Error(`<${open.at(-1)?.tag}> is never closed`);
  return { root, drawn };
}
