import { addedRecords } from '../../trial/bench/added-records.ts';
import type { BenchRecords } from '../../trial/bench/bench.ts';
import { dateOfDay } from '../../trial/bench/date-of-day.ts';
import { dayAt } from '../../trial/bench/day-at.ts';
import { missedSowings } from '../../trial/bench/missed-sowings.ts';
import { readBenchFile } from '../../trial/bench/read-bench-file.ts';
import { recorded } from '../../trial/bench/recorded.ts';
import { typedName } from '../../trial/bench/typed-name.ts';
import { undone } from '../../trial/bench/undone.ts';
import { withCount } from '../../trial/bench/with-count.ts';
import { countRow } from './_count-rows.ts';
import { at, made } from './_elements.ts';
import { eventForm } from './_event-form.ts';
import { measureForm } from './_measure-form.ts';
import type { OpenSession } from './_open-session.ts';
import { say } from './_page-words.ts';
import { savesShown } from './_saves-shown.ts';
import { showProblems } from './_show-problems.ts';
import { removeStored, store } from './_store.ts';
import { today } from './_today.ts';

/**
 * Records a trial: every change is stored before anything else happens, and shown.
 *
 * @param stored revision that is on the device; null: nothing of this trial is
 */
export function recording(opened: OpenSession, stored: number | null): void {
  let session = opened;
  let saving = Promise.resolve();
  let onDevice = stored;
  at('recording').hidden = false;
  at('title').textContent = session.trial.title;
  at('germinated').textContent = session.trial.germinated === null ? '' : say('germinated', { germinated: session.trial.germinated }); // prettier-ignore

  const current = () => session;
  const put = (next: OpenSession) => {
    if (next === session) return;
    session = next;
    refresh();
    saving = saving.then(() => storeNow(next)).catch(() => void (at('status').textContent = say('unstored')));
  };
  async function storeNow(next: OpenSession): Promise<void> {
    const there = await store(next, onDevice);
    onDevice = (there ?? next).revision;
    if (there === null) return;
    session = { ...there, entry: session.entry };
    at('status').textContent = say('elsewhere');
    refresh();
  }
  const keep = (records: BenchRecords) => put({ ...recorded(session, records), entry: session.entry });
  const enter = (entry: Partial<OpenSession['entry']>) => put({ ...session, entry: { ...session.entry, ...entry } });

  const rows = session.trial.sowings.map((sowing) =>
    countRow(sowing, current, (id, day, typed) => {
      const { scorer, how } = session.entry;
      keep(withCount(session.records, { sowing: id, day, typed, scorer }, how));
    }),
  );
  at('rows').replaceChildren(...rows.map(({ element }) => element));
  const measured = measureForm(current, keep);
  const noted = eventForm(current, keep);
  const saves = savesShown(current);

  const field = (id: string) => at<HTMLInputElement>(id);
  field('sown').addEventListener('change', () => {
    const sown = field('sown').value || null;
    put({ ...session, trial: { ...session.trial, sown } });
  });
  field('date').addEventListener('change', () => enter({ when: { date: field('date').value || today() } }));
  field('day').addEventListener('input', () => {
    const day = /^\d{1,4}([.,]\d{1,2})?$/.test(field('day').value.trim()) ? field('day').value.replace(',', '.') : '';
    if (day !== '') enter({ when: { day: Number(day) } });
  });
  field('scorer').addEventListener('input', () => enter({ scorer: typedName(field('scorer').value) }));
  at('how').addEventListener('change', () => enter({ how: field('how').value === 'new' ? 'new' : 'cumulative' }));
  at('files').addEventListener('change', () => {
    put({ ...session, trial: { ...session.trial, counts: field('files').value === 'new' ? 'new' : 'cumulative' } });
  });
  at('today').addEventListener('click', () => enter({ when: { date: today() } }));
  at('undo').addEventListener('click', () => {
    put({ ...undone(session), entry: session.entry });
    at('status').textContent = say('undone');
  });
  field('import').addEventListener('change', async () => {
    for (const file of field('import').files ?? []) await bringIn(file);
    field('import').value = '';
  });
  let sure = false;
  at('delete').addEventListener('click', async () => {
    if (sure) {
      await saving.then(() => removeStored(session.trial.id)).catch(() => undefined);
      location.href = at<HTMLAnchorElement>('recording').querySelector('a')?.href ?? './';
    }
    sure = true;
    at('delete').textContent = say('deleteSure');
  });
  document.addEventListener('visibilitychange', refresh);
  for (const id of ['scorer', 'how', 'files', 'sown']) {
    const value = { scorer: session.entry.scorer, how: session.entry.how, files: session.trial.counts, sown: session.trial.sown }[id]; // prettier-ignore
    field(id).value = value ?? '';
  }
  refresh();
  saving = storeNow(session).catch(() => void (at('status').textContent = say('unstored')));

  async function bringIn(file: File): Promise<void> {
    const { kind, records, problems } = readBenchFile(file.name, new Uint8Array(await file.arrayBuffer()), session.trial); // prettier-ignore
    if (records === null) {
      const isOurs = problems.length > 0 && kind !== 'sowings';
      showProblems(say(isOurs ? 'refused' : 'unknownFile', { file: file.name }), problems);
      return;
    }
    const added = addedRecords(session.records, records);
    keep(added.records);
    const cells = added.differing.map(({ sowing, day }) => say('cell', { sowing, day })).join(', ');
    showProblems(say(cells === '' ? 'imported' : 'differing', { file: file.name, cells }), problems);
    if (cells === '') return;
    const take = made('button', say('takeFile'), { type: 'button' });
    take.addEventListener('click', () => {
      keep(addedRecords(session.records, records).asInFile);
      showProblems('', []);
    });
    at('problems').append(take);
  }

  function refresh(): void {
    const { trial, entry, undo } = session;
    const starts = new Set(trial.sowings.map(({ sown }) => sown ?? trial.sown));
    const [start = null] = starts.size === 1 ? [...starts] : [];
    const { when } = entry;
    const date = 'date' in when ? when.date : start && dateOfDay(start, when.day);
    const day = dayAt({ sown: start }, when, null);
    if (document.activeElement !== field('date')) field('date').value = date ?? '';
    if (document.activeElement !== field('day')) field('day').value = day === null ? '' : String(day);
    const isNow = date === today();
    const canCount = trial.sowings.some((sowing) => dayAt(sowing, when, trial.sown) !== null);
    at('when-note').textContent = !canCount ? say('noDay') : date === null || isNow ? '' : say('notToday', { date });
    at('today').hidden = isNow;
    at('planned').textContent = trial.days.length > 0 ? say('planned', { days: trial.days.join(', ') }) : '';
    const missed = missedSowings(session, when).map(({ id, label }) => label ?? id);
    at('missed').textContent = missed.length > 0 ? say('missed', { sowings: missed.join(', ') }) : canCount ? say('complete') : ''; // prettier-ignore
    at<HTMLButtonElement>('undo').disabled = undo.length === 0;
    for (const row of rows) row.refresh();
    measured();
    noted();
    saves();
  }
}
