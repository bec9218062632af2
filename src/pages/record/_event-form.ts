import type { BenchEvent, BenchRecords } from '../../trial/bench/bench.ts';
import { dayAt } from '../../trial/bench/day-at.ts';
import { typedText } from '../../trial/bench/typed-text.ts';
import { at, made } from './_elements.ts';
import { fillSowings } from './_fill-sowings.ts';
import type { OpenSession } from './_open-session.ts';
import { say } from './_page-words.ts';

/** The form for mishaps and care. Gives back what lists those that are noted, each with a button to take it out. */
export function eventForm(current: () => OpenSession, keep: (records: BenchRecords) => void): () => void {
  const field = (name: string) => at<HTMLInputElement>(`e-${name}`);
  fillSowings('e-sowing', current().trial, say('allSowings'));
  at('e-keep').addEventListener('click', () => {
    const { records, trial, entry } = current();
    const sowing = trial.sowings.find(({ id }) => `s${id}` === field('sowing').value) ?? null;
    const day = dayAt(sowing ?? { sown: null }, entry.when, trial.sown);
    const date = 'date' in entry.when ? entry.when.date : null;
    const what = typedText(field('what').value);
    const action = field('action').value as BenchEvent['action'];
    const isWhole = what !== null && (day !== null || date !== null) && (action !== 'left-out' || sowing !== null);
    at('e-note').textContent = isWhole ? '' : say('badEvent');
    if (!isWhole) return;
    const next = String(Math.max(0, ...Object.keys(records.events).map(Number)) + 1);
    const event = { day, date, sowing: sowing?.id ?? null, what, action };
    keep({ ...records, events: { ...records.events, [next]: event } });
    field('what').value = '';
  });
  let shown: BenchRecords['events'] | null = null;
  return () => {
    const { records, trial } = current();
    if (records.events === shown) return;
    shown = records.events;
    const entries = Object.entries(records.events).map(([key, { day, date, sowing, what, action }]) => {
      const label = trial.sowings.find(({ id }) => id === sowing)?.label ?? sowing ?? say('allSowings');
      const text = [date ?? `${say('day')} ${day}`, label, what, say(action)].join(' · ');
      const remove = made('button', '×', { type: 'button', 'aria-label': say('remove', { what }) });
      remove.addEventListener('click', () => {
        const { [key]: _gone, ...events } = current().records.events;
        keep({ ...current().records, events });
      });
      const entry = made('li', `${text} `);
      entry.append(remove);
      return entry;
    });
    at('events').replaceChildren(...entries);
  };
}
