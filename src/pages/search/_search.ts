/** What this page uses of the search library (Pagefind, built into `/pagefind/`). */
interface Library {
  init(): Promise<void>;
  filters(): Promise<unknown>;
  /** Searches another index along with this one. */
  mergeIndex(address: string): Promise<void>;
  search(words: string): Promise<{ results: readonly { data(): Promise<Found> }[] }>;
}
interface Found {
  readonly url: string;
  readonly excerpt: string;
  readonly meta: Readonly<Record<string, string>>;
}

const MOST = 20;

/**
 * Brings the search form to life. The library and its index are loaded at the first search, not before; the words
 * stand in the address (`?q=leek`), so that a search can be linked to. Texts come from the form's data attributes.
 */
export function search(page: Document): void {
  const form = page.querySelector<HTMLFormElement>('#search');
  const input = form?.querySelector('input');
  const status = page.querySelector<HTMLElement>('#search-status');
  const list = page.querySelector<HTMLElement>('#search-results');
  if (!form || !input || !status || !list) return;
  const texts = form.dataset as Readonly<Record<'library' | 'none' | 'found' | 'failed', string>>;
  let library: Promise<Library> | undefined;
  let latest = 0;

  async function run(words: string): Promise<void> {
    const turn = ++latest;
    history.replaceState(null, '', words === '' ? location.pathname : `?${new URLSearchParams({ q: words })}`);
    if (words === '') return show('', []);
    try {
      library ??= load(texts.library);
      const { results } = await (await library).search(words);
      const found = await Promise.all(results.slice(0, MOST).map((result) => result.data()));
      if (turn !== latest) return; // another search began meanwhile
      const text = results.length === 0 ? texts.none.replace('{words}', words) : texts.found;
      show(text.replace('{n}', `${results.length}`).replace('{shown}', `${found.length}`), found);
    } catch {
      library = undefined;
      show(texts.failed, []);
    }
  }

  function show(text: string, found: readonly Found[]): void {
    if (status) status.textContent = text;
    list?.replaceChildren(...found.map((one) => entry(page, one)));
  }

  form.hidden = false;
  page.querySelector('#search-alone')?.setAttribute('hidden', '');
  form.addEventListener('submit', (event) => {
    event.preventDefault();
    void run(input.value.trim());
  });
  const asked = new URLSearchParams(location.search).get('q')?.trim() ?? '';
  input.value = asked;
  if (asked !== '') void run(asked);
}

/** @throws where something of it cannot be loaded; the next call tries again */
async function load(address: string): Promise<Library> {
  const { href } = new URL(address, location.href);
  const list = await fetch(new URL('parts.json', href), { cache: 'no-cache' });
  const parts: readonly string[] = await list.json();
  const { createInstance }: { createInstance(): Library } = await import(/* @vite-ignore */ href);
  const library = createInstance();
  await library.init();
  if (parts.length > 0) await library.filters(); // fails where the first part could not be loaded, for which the others would wait for ever
  await Promise.all(parts.map((part) => library.mergeIndex(new URL(part, href).pathname)));
  return library;
}

function entry(page: Document, { url, excerpt, meta }: Found): HTMLElement {
  const item = page.createElement('li');
  const link = page.createElement('a');
  const text = page.createElement('p');
  link.href = url;
  link.textContent = meta.title ?? url;
  text.append(...marked(page, excerpt));
  item.append(link, text);
  return item;
}

/** An excerpt as text: the library escapes it and puts what was found between `<mark>` and `</mark>`. */
function marked(page: Document, excerpt: string): Node[] {
  return excerpt.split(/<\/?mark>/).map((part, index) => {
    const text = page.createTextNode(part.replace(/&(?:amp|lt|gt|quot|#39|#x27);/g, (sign) => SIGNS[sign] ?? sign));
    if (index % 2 === 0) return text;
    const mark = page.createElement('mark');
    mark.append(text);
    return mark;
  });
}

const SIGNS: Readonly<Record<string, string>> = {
  '&amp;': '&',
  '&lt;': '<',
  '&gt;': '>',
  '&quot;': '"',
  '&#39;': "'",
  '&#x27;': "'",
};
