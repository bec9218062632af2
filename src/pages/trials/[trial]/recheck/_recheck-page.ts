import './_jitless.ts'; // first
import { analyse } from '../../../../analysis/analyse.ts';
import { recompute } from '../../../../archive/recompute.ts';
import { fetchFiles } from './_fetch-files.ts';
import { listItem } from './_list-item.ts';
import { ownFiles } from './_own-files.ts';
import { showRecheck } from './_show-recheck.ts';
import type { Told } from './_told.ts';

/**
 * Works the trial of the page out again when asked to, from the published files or with some of the reader's own in
 * their place. The files are fetched with the page, so that it works without a connection from then on.
 */
export function recheckPage(page: Document): void {
  const told: Told = JSON.parse(page.querySelector('#told')?.textContent ?? '');
  const status = page.querySelector<HTMLElement>('[role=status]');
  const [run, choose, reset] = ['#run', '#choose', '#reset'].map((id) => page.querySelector<HTMLElement>(id));
  const own = new Map<string, Uint8Array>();
  let fetching = fetchFiles(told);
  for (const part of page.querySelectorAll<HTMLElement>('.with-script')) part.hidden = false;

  async function workOut(): Promise<void> {
    say(told.texts.running ?? '');
    const { found, lost } = await fetching;
    if (lost.length > 0) {
      fetching = fetchFiles(told); // the next press may find a connection
      say((told.texts.lost ?? '').replace('{files}', lost.join(', ')));
      return;
    }
    await new Promise((resolve) => setTimeout(resolve, 50)); // the page says first that it works
    const result = recompute(new Map([...found, ...own]), analyse, ['text']);
    if (typeof result === 'string') say(told.texts.noTrial ?? '', result);
    else showRecheck(page, result, told);
  }

  async function take(given: readonly File[]): Promise<void> {
    const files = await ownFiles(given);
    if (typeof files === 'string') {
      say(told.texts.noTrial ?? '', files);
      return;
    }
    const { found } = await fetching;
    const unknown = [...files.keys()].filter((name) => !found.has(name) && !/\.(csv|yaml)$/.test(name));
    for (const [name, bytes] of files) if (!unknown.includes(name)) own.set(name, bytes);
    note('changed', [...own.keys()]);
    note('unknown', unknown);
    if (reset) reset.hidden = own.size === 0;
    await workOut();
  }

  function say(text: string, english = ''): void {
    const sentence = listItem(english, 'p');
    sentence.lang = 'en';
    status?.replaceChildren(listItem(text, 'p'), ...(english === '' ? [] : [sentence]));
  }

  function note(key: 'changed' | 'unknown', names: readonly string[]): void {
    const place = page.querySelector(`#${key}`);
    if (place)
      place.textContent = names.length === 0 ? '' : (told.texts[key] ?? '').replace('{files}', names.join(', '));
  }

  run?.addEventListener('click', () => void workOut());
  reset?.addEventListener('click', () => {
    own.clear();
    void take([]);
    run?.focus();
  });
  choose?.addEventListener('change', () => {
    if (choose instanceof HTMLInputElement) void take([...(choose.files ?? [])]).then(() => (choose.value = ''));
  });
  page.addEventListener('dragover', (event) => event.preventDefault());
  page.addEventListener('drop', (event) => {
    event.preventDefault();
    void take([...(event.dataTransfer?.files ?? [])]);
  });
}
