import type { BenchTrial } from '../../trial/bench/bench.ts';
import { newSession } from '../../trial/bench/new-session.ts';
import { readBenchFile } from '../../trial/bench/read-bench-file.ts';
import { readBenchSowings } from '../../trial/bench/read-bench-sowings.ts';
import { addedRecords } from '../../trial/bench/added-records.ts';
import { inBenchOrder } from '../../print/sheets/in-bench-order.ts';
import { at, made } from './_elements.ts';
import type { OpenSession } from './_open-session.ts';
import { say } from './_page-words.ts';
import { recording } from './_recording.ts';
import { showProblems } from './_show-problems.ts';
import { storedSession, storedSessions } from './_store.ts';
import { today } from './_today.ts';

/** Starts the page: its service worker, the list of trials, and the trial that its address names. */
export function recordPage(): void {
  for (const part of document.querySelectorAll<HTMLElement>('.needs-script')) part.hidden = false;
  if (import.meta.env.PROD) navigator.serviceWorker?.register(`${import.meta.env.BASE_URL.replace(/\/$/, '')}/record/worker.js`).catch(() => undefined); // prettier-ignore
  const wanted = new URLSearchParams(location.search).get('trial');
  if (wanted !== null) open(wanted);
  storedSessions().then(listStored, () => (at('status').textContent = say('unstored')));
  at<HTMLInputElement>('sowings-file').addEventListener('change', async ({ target }) => {
    const [file] = (target as HTMLInputElement).files ?? [];
    if (!file) return;
    const { sowings, problems } = readBenchSowings(file.name, new Uint8Array(await file.arrayBuffer()));
    showProblems(sowings === null ? say('refused', { file: file.name }) : '', problems);
    if (sowings === null) return;
    const title = file.name.replace(/\.\w+$/, '');
    const id = `file:${title}:${sowings.map((sowing) => sowing.id).join(',')}`;
    const trial = { id, title, sown: null, germinated: null, counts: 'cumulative', days: [], traits: [], sowings: inBenchOrder(sowings) } as const; // prettier-ignore
    begin((await storedSession(id).catch(() => undefined)) ?? newSession(trial));
  });
}

function listStored(sessions: readonly { readonly trial: BenchTrial }[]): void {
  at('on-device').hidden = sessions.length === 0;
  for (const { trial } of sessions) {
    const link = made('a', trial.title, { class: 'big', href: `?trial=${encodeURIComponent(trial.id)}` });
    const entry = made('li');
    entry.append(link);
    at('stored').append(entry);
  }
}

/** From this device; else from the site, with what its published files hold so far. */
async function open(id: string): Promise<void> {
  const there = await storedSession(id).catch(() => undefined);
  if (there) return begin(there);
  try {
    const response = await fetch(`trials/${encodeURIComponent(id)}.json`);
    if (!response.ok) throw new Error(String(response.status));
    const { format: _format, files, ...trial } = (await response.json()) as BenchTrial & { format: string; files: string[] }; // prettier-ignore
    let session = newSession(trial);
    for (const file of files) {
      const raw = await fetch(`../trials/${encodeURIComponent(id)}/data/${file}`);
      if (!raw.ok) throw new Error(String(raw.status));
      const { records } = readBenchFile(file, new Uint8Array(await raw.arrayBuffer()), trial);
      if (records) session = { ...session, records: addedRecords(session.records, records).records };
    }
    begin(session);
  } catch {
    at('status').textContent = say('notThere');
  }
}

function begin(session: ReturnType<typeof newSession> & Partial<Pick<OpenSession, 'entry'>>): void {
  at('opening').hidden = true;
  at('status').textContent = '';
  const entry = session.entry ?? { when: { date: today() }, how: session.trial.counts, scorer: null };
  recording({ ...session, entry }, session.entry ? session.revision : null);
}
