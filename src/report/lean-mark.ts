/** One line, shape or word of a chart. */
export interface Mark {
  /** Attributes that say what it looks like: ` stroke="red"`. */
  readonly look: string;
  /** Where it is, as a path; empty for words and discs. */
  readonly path: string;
  /** One path for several looks as many do: always, or where all run one way and cannot cross; null: never. */
  readonly joins: 'always' | 'across' | 'down' | null;
  tag(look: string): string;
}

type Attributes = Map<string, string>;
const PLACE = ['transform', 'd', 'x2', 'y2'];

/**
 * A mark of Vega's SVG the short way: words stand at x and y, lines and shapes are paths without a transform,
 * discs are circles or, filled with the colour of their edge, dots of a round pen; squares of one colour are
 * filled to the edge (a dot of a square pen has no direction, and PDF leaves it out); places with one decimal.
 * Null where it draws nothing or is drawn some other way.
 */
export function markOf(tag: string): Mark | null {
  const end = tag.indexOf('>');
  const [head, words] = [tag.slice(1, end), tag.slice(end + 1, Math.max(end + 1, tag.lastIndexOf('<')))];
  const element = /^\w+/.exec(head)?.[0] ?? '';
  const attributes = attributesOf(head.slice(element.length));
  const moved = /^translate\(([\d.-]+),([\d.-]+)\)$/.exec(attributes.get('transform') ?? 'translate(0,0)');
  if (!moved) return null;
  const [x, y] = [Number(moved[1]), Number(moved[2])];
  if (element === 'text') return word(attributes, words, x, y);
  if (element === 'line') return line(attributes, x, y);
  return shape(attributes, x, y);
}

/** Read by hand: a report has thousands. */
function attributesOf(written: string): Attributes {
  const attributes: Attributes = new Map();
  for (let at = 0, is = written.indexOf('="'); is !== -1; is = written.indexOf('="', at)) {
    const end = written.indexOf('"', is + 2);
    attributes.set(written.slice(at + 1, is), written.slice(is + 2, end));
    at = end + 1;
  }
  return attributes;
}

/** Ink is what words have anyway (Figure.astro). */
function word(attributes: Attributes, words: string, x: number, y: number): Mark {
  if (attributes.get('fill') === 'currentColor') attributes.delete('fill');
  const place = (x === 0 ? '' : ` x="${short(x)}"`) + (y === 0 ? '' : ` y="${short(y)}"`);
  return { look: lookOf(attributes), path: '', joins: null, tag: (look) => `<text${look}${place}>${words}</text>` };
}

function line(attributes: Attributes, x: number, y: number): Mark {
  const [right, down] = [Number(attributes.get('x2') ?? 0), Number(attributes.get('y2') ?? 0)];
  const to = down === 0 ? `H${short(x + right)}` : right === 0 ? `V${short(y + down)}` : `L${short(x + right)},${short(y + down)}`; // prettier-ignore
  const look = lookOf(attributes);
  const joins = !look.includes('opacity') ? 'always' : down === 0 ? 'across' : right === 0 ? 'down' : null;
  return pathMark(look, `M${short(x)},${short(y)}${to}`, joins);
}

function shape(attributes: Attributes, x: number, y: number): Mark | null {
  const d = attributes.get('d') ?? '';
  const look = lookOf(attributes);
  const edge = Number(attributes.get('stroke-width') ?? 1);
  const [fill, stroke] = [attributes.get('fill'), edge === 0 ? undefined : attributes.get('stroke')];
  const isWhole = !look.includes('opacity');
  const outer = (size: number) => size + (stroke ? edge : 0);
  const isOneColour = fill && isWhole && (!stroke || stroke === fill);
  const disc = /^M([\d.]+),0A\1,\1,0,1,1,-\1,0A\1,\1,0,1,1,\1,0Z?$/.exec(d);
  if (disc) {
    const r = Number(disc[1]);
    if (isOneColour) {
      const pen = ` stroke="${fill}" stroke-width="${short(outer(2 * r))}" stroke-linecap="round"`;
      return pathMark(pen, `M${short(x)},${short(y)}h0`, 'always');
    }
    const place = ` cx="${short(x)}" cy="${short(y)}" r="${short(r)}"`;
    return { look, path: '', joins: null, tag: (shown) => `<circle${shown}${place}/>` };
  }
  const square = /^M-([\d.]+),-\1h([\d.]+)v\2h-\2Z$/.exec(d);
  if (square && isOneColour && Math.abs(Number(square[2]) - 2 * Number(square[1])) < 0.05) {
    const size = outer(Number(square[2]));
    const side = short(size);
    return pathMark(
      ` fill="${fill}"`,
      `M${short(x - size / 2)},${short(y - size / 2)}h${side}v${side}h-${side}Z`,
      'always',
    );
  }
  const joins = isWhole && (!fill || fill === stroke) ? 'always' : null;
  const relative = /^M([\d.-]+),([\d.-]+)([a-zZ\d.,-]*)$/.exec(d);
  if (relative) {
    const [, left, top, rest = ''] = relative;
    return pathMark(look, `M${short(x + Number(left))},${short(y + Number(top))}${shortened(rest)}`, joins);
  }
  if (x !== 0 || y !== 0) return null;
  return pathMark(look, /^M[\d.-]+,[\d.-]+(?:L[\d.-]+,[\d.-]+)+$/.test(d) ? steps(d) : shortened(d), joins);
}

const pathMark = (look: string, path: string, joins: Mark['joins']): Mark => ({
  look,
  path,
  joins,
  tag: (shown) => `<path${shown} d="${path}"/>`,
});

/** Without what is so anyway: full opacity, strokes of no width or of one unit, dashes without gaps, words that start at their place. */
function lookOf(attributes: Attributes): string {
  const isBare = attributes.get('stroke-width') === '0';
  return [...attributes]
    .filter(([name, value]) => !PLACE.includes(name) && !isUsual(name, value) && !(isBare && name.startsWith('stroke')))
    .map(([name, value]) => ` ${name}="${name === 'font-size' ? value.replace('px', '') : value}"`)
    .join('');
}

const isUsual = (name: string, value: string): boolean =>
  name.endsWith('opacity') || name === 'stroke-width'
    ? value === '1'
    : (name === 'stroke-dasharray' && value === '1,0') || (name === 'text-anchor' && value === 'start');

/** `M0,9L4,9L6,9L6,2` -> `M0,9H6V2`: what goes on the same way is one move. */
function steps(path: string): string {
  const [start = '', ...points] = shortened(path).slice(1).split('L');
  let [x = '', y = ''] = start.split(',');
  let way = '';
  const moves: string[] = [];
  for (const point of points) {
    const [toX = '', toY = ''] = point.split(',');
    const on = way;
    way = toX === x ? (toY === y ? on : `V${Number(toY) > Number(y)}`) : toY === y ? `H${Number(toX) > Number(x)}` : '';
    if (way === on && on !== '') moves.pop();
    moves.push(way === '' ? `L${point}` : way.startsWith('V') ? `V${toY}` : `H${toX}`);
    [x, y] = [toX, toY];
  }
  return `M${start}${moves.join('')}`;
}

const short = (number: number): string => String(Math.round(number * 10) / 10 || 0);
const shortened = (path: string): string => path.replace(/-?\d+\.\d{2,}/g, (number) => short(Number(number)));
