import { parse, tupleid, View } from 'vega';
import { compile, type TopLevelSpec } from 'vega-lite';
import { chartTheme, FACE, PAPER } from './chart-theme.ts';

/** Everything of a specification that differs from trial to trial. */
interface Varying {
  readonly width: number;
  readonly height: number;
  readonly padding: { readonly left: number; readonly top: number; readonly right: number; readonly bottom: number };
  readonly datasets: Readonly<Record<string, readonly object[]>>;
  readonly params?: readonly { readonly name: string; readonly value: unknown }[];
}

/** A drawing board for one kind of chart; takes one chart at a time. */
interface Board {
  readonly view: View;
  last: Promise<unknown>;
}

/** Made once for each kind of chart, kept by what does not differ: a chart then takes 1 ms in place of 10. */
const boards = new Map<string, Board>();

/**
 * Draws a chart: the same specification and id give the same bytes, whatever was drawn before.
 * The SVG holds no style attribute, no script and no address, and takes its ink from the text colour around it;
 * whoever places it names it (`role="img"` and the chart's description).
 *
 * @param spec a Vega-Lite specification with `width`, `height`, `padding` and named `datasets` as numbers and rows
 * @param id unique on the page; prefixes the ids inside the SVG, which Vega numbers on from chart to chart
 * @param paper colour of open marks; print, which knows no CSS variables, gives its own
 * @throws {Error} on anything that Vega or Vega-Lite would warn about
 */
export async function renderSvg(spec: TopLevelSpec, id: string, paper = PAPER): Promise<string> {
  const { width, height, padding, datasets, params = [], ...kind } = spec as TopLevelSpec & Varying;
  const names = params.map(({ name }) => ({ name, value: null }));
  const key = JSON.stringify({ ...kind, params: names });
  const board = boards.get(key) ?? boardOf({ ...kind, params: names } as TopLevelSpec);
  boards.set(key, board);
  const svg = board.last.then(async () => {
    const { view } = board;
    view.width(width).height(height).padding(padding);
    for (const { name, value } of params) view.signal(name, value);
    for (const [name, rows] of Object.entries(datasets)) {
      view.data(
        name,
        rows.map((row) => ({ ...row })),
      ); // Vega marks its rows
    }
    await view.runAsync();
    inOrder((view.scenegraph() as unknown as { readonly root: Marks }).root);
    return view.toSVG();
  });
  board.last = svg.catch(() => boards.delete(key)); // what is half drawn is not drawn on
  return tidy(await svg, id, paper);
}

function boardOf(kind: TopLevelSpec): Board {
  const { spec } = compile({ ...kind, width: 1, height: 1 } as TopLevelSpec, {
    config: chartTheme,
    logger: strictLogger,
  });
  return { view: new View(parse(spec), { renderer: 'none', logger: strictLogger }), last: Promise.resolve() };
}

interface Marks {
  readonly role?: string;
  readonly items: { readonly datum?: { readonly value?: unknown }; readonly items?: Marks[] }[];
}

/** Ticks in the order of their values, lines in the order of their rows: a board keeps those it has drawn before in front. */
function inOrder({ role = '', items }: Marks): void {
  if (role.startsWith('axis-')) items.sort((a, b) => Number(a.datum?.value) - Number(b.datum?.value));
  if (role === 'scope') items.sort((a, b) => firstRow(a) - firstRow(b));
  for (const item of items) item.items?.forEach(inOrder);
}

const firstRow = ({ items }: Marks['items'][number]): number => tupleid((items?.[0]?.items[0]?.datum ?? {}) as object);

/**
 * Only tags are touched (Vega escapes "<" and ">" in text and attributes), so a label may say anything.
 * Roles inside are dropped, because the picture is read as one; coordinates keep two decimals.
 */
function tidy(svg: string, id: string, paper: string): string {
  const ids = new Map<string, string>();
  const renamed = (name: string) => {
    if (!ids.has(name)) ids.set(name, `${id}-${ids.size + 1}`);
    return ids.get(name);
  };
  return svg
    .replace(/<path class="(?:background|foreground)"[^>]*\/>/g, '')
    .replace(/<[^>]+>/g, (tag) =>
      tag
        .replace(/ (?:role|aria-\w+|font-family|pointer-events|xmlns:xlink|version)="[^"]*"/g, '')
        .replace(/(id="|#)((?:clip|gradient_)\d+)/g, (_, before: string, name: string) => `${before}${renamed(name)}`)
        .replaceAll(PAPER, paper)
        .replace(/-?\d+\.\d{3,}/g, (number) => String(Math.round(Number(number) * 100) / 100)),
    )
    .replace('<svg ', `<svg font-family="${FACE}" `);
}

/** A Vega logger that lets nothing pass. */
const strictLogger = {
  level() {
    return this;
  },
  info() {
    return this;
  },
  debug() {
    return this;
  },
  warn(...messages: readonly unknown[]): never {
    throw new Error(`The chart could not be drawn as asked: ${messages.join(' ')}`);
  },
  error(...messages: readonly unknown[]): never {
    throw new Error(`The chart could not be drawn: ${messages.join(' ')}`);
  },
} as never;
