import { differencesOf } from '../../../../archive/differences.ts';
import type { Recheck } from '../../../../archive/recompute.ts';
import { listItem } from './_list-item.ts';
import type { Told } from './_told.ts';

/** Fills the page with what was found: the sentence, the files, the figures side by side and every difference. */
export function showRecheck(page: ParentNode, found: Recheck, told: Told): void {
  const { texts } = told;
  page.querySelector('[role=status]')?.replaceChildren(...sentences(found, texts).map((text) => listItem(text, 'p')));
  const files = found.files.map(({ file, kind, message }) => {
    const item = listItem(`${file} ${texts[`file.${kind}`]}`);
    if (kind === 'unreadable') item.append(english(` ${message.replace(/^cannot be worked out again: /, '')}`));
    return item;
  });
  fill(page, '#files', files);
  const differences = found.differences.map(({ path, published, recomputed }) =>
    listItem(`${path}: ${texts.published} ${json(published)}, ${texts.recomputed} ${json(recomputed)}`),
  );
  fill(page, '#differences', differences);
  fillFigures(page, found, told);
}

function sentences({ figures, files, differences, recomputed }: Recheck, texts: Told['texts']): string[] {
  const say = (key: string, values: Readonly<Record<string, number>>) =>
    (texts[key] ?? '').replace(/\{(\w+)\}/g, (_, name: string) => String(values[name]));
  if (recomputed === null) return [say('notWorked', {})];
  const differing = differences.filter(({ published }) => typeof published === 'number').length;
  const others = differences.length - differing;
  if (figures === 0 && others === 0) return [say('nothing', {})];
  if (differences.length === 0) return [say(files.length === 0 ? 'same' : 'sameFigures', { n: figures })];
  return [say('differs', { differing, n: figures }), ...(others > 0 ? [say('other', { n: others })] : [])];
}

function fillFigures(page: ParentNode, { published, recomputed, differences }: Recheck, told: Told): void {
  const figuresOf = (analysis: unknown) =>
    new Map(differencesOf(analysis, analysis).figures.map(({ path, value }) => [path, value]));
  const [before, after] = [figuresOf(published), figuresOf(recomputed)];
  const differing = differences.map(({ path }) => path);
  for (const row of page.querySelectorAll<HTMLElement>('tr[data-path]')) {
    const path = row.dataset.path ?? '';
    const [was, is] = [before.get(path), after.get(path)];
    // A place differs as well where something that holds it does.
    const agrees = was !== undefined && is !== undefined && !differing.some((place) => path.startsWith(place));
    const digits = !agrees && is !== undefined && was !== undefined && shown(was, 10) === shown(is, 10) ? 17 : 10;
    const cells = [
      was === undefined ? told.texts.none : shown(was, digits),
      is === undefined ? told.texts.none : shown(is, digits),
      agrees ? told.texts.yes : told.texts.no,
    ];
    row.querySelectorAll('td').forEach((cell, index) => (cell.textContent = cells[index] ?? ''));
    row.classList.toggle('differs', !agrees);
  }

  function shown(value: number, digits: number): string {
    return value.toLocaleString(told.language, { maximumSignificantDigits: digits });
  }
}

function fill(page: ParentNode, selector: string, items: readonly HTMLElement[]): void {
  const section = page.querySelector<HTMLElement>(selector);
  section?.querySelector('ul')?.replaceChildren(...items);
  if (section) section.hidden = items.length === 0;
}

function json(value: unknown): string {
  const text = JSON.stringify(value) ?? '–';
  return text.length > 120 ? `${text.slice(0, 119)}…` : text;
}

function english(text: string): HTMLElement {
  const span = listItem(text, 'span');
  span.lang = 'en';
  return span;
}
