/**
 * A chart's SVG without what changes nothing in the picture: names and nests of Vega's groups, full
 * opacity, strokes of no width, dashes without gaps, moves by nothing; steps and discs are written the
 * short way. About a third of a page of charts is saved.
 */
export function leanSvg(svg: string): string {
  const open: boolean[] = []; // for each open group: is it kept?
  return svg
    .replace(/<[^>]+>/g, (tag) => leanTag(tag))
    .replace(/<g(?: [^>]*)?\/>|<g(?: [^>]*)?>|<\/g>/g, (tag) => {
      if (tag.endsWith('/>')) return '';
      if (tag !== '</g>') open.push(tag !== '<g>');
      return (tag === '</g>' ? open.pop() : open.at(-1)) ? tag : '';
    });
}

function leanTag(tag: string): string {
  const lean = tag
    .replace(/ class="(?:mark-[^"]*|marks)"/, '')
    .replace(/ (?:(?:fill|stroke)-)?opacity="1"/g, '')
    .replace(/ stroke="[^"]*" stroke-width="0"/, '')
    .replace(/ stroke-dasharray="1,0"/, '')
    .replace(' transform="translate(0,0)"', '');
  return lean
    .replace(
      /^<path transform="translate\(([\d.-]+),([\d.-]+)\)" d="M([\d.]+),0A\3,\3,0,1,1,-\3,0A\3,\3,0,1,1,\3,0"/,
      '<circle cx="$1" cy="$2" r="$3"',
    )
    .replace(/ d="(M[\d.-]+,[\d.-]+(?:L[\d.-]+,[\d.-]+)+)"/, (_, path: string) => ` d="${steps(path)}"`);
}

/** `M0,9L4,9L4,9L4,2` -> `M0,9H4V2`. */
function steps(path: string): string {
  const [start = '', ...points] = path.slice(1).split('L');
  let [x, y] = start.split(',');
  const moves = points.map((point) => {
    const [toX, toY] = point.split(',');
    const move = toX === x ? (toY === y ? '' : `V${toY}`) : toY === y ? `H${toX}` : `L${point}`;
    [x, y] = [toX, toY];
    return move;
  });
  return `M${start}${moves.join('')}`;
}
