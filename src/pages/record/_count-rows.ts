import type { BenchSowing } from '../../trial/bench/bench.ts';
import { countDoubts } from '../../trial/bench/count-doubts.ts';
import { dayAt } from '../../trial/bench/day-at.ts';
import { lastTotal } from '../../trial/bench/last-total.ts';
import { typedCount, type TypedCount } from '../../trial/bench/typed-count.ts';
import { typedCountText } from '../../trial/bench/typed-count-text.ts';
import { made } from './_elements.ts';
import type { OpenSession } from './_open-session.ts';
import { say } from './_page-words.ts';

/** A row of big buttons for a sowing; `refresh` shows what is recorded, and leaves a field alone that is being typed in. */
export function countRow(
  sowing: BenchSowing,
  current: () => OpenSession,
  keep: (sowing: string, day: number, typed: TypedCount) => void,
): { readonly element: HTMLElement; refresh(): void } {
  const name = sowing.label ?? sowing.id;
  const about = made('span', '', { class: 'soft' });
  const title = made('span');
  title.append(made('b', name), about);
  const minus = made('button', '−', { type: 'button', 'aria-label': say('minus', { sowing: name }) });
  const input = made('input', '', { inputmode: 'numeric', autocomplete: 'off', 'aria-label': say('countOf', { sowing: name }) }); // prettier-ignore
  const plus = made('button', '+', { type: 'button', 'aria-label': say('plus', { sowing: name }) });
  const nc = made('button', 'NC', { type: 'button', 'aria-label': say('nc', { sowing: name }) });
  const doubt = made('p', '', { class: 'doubt', role: 'status' });
  const element = made('li');
  element.append(title, minus, input, plus, nc, doubt);

  const day = () => dayAt(sowing, current().entry.when, current().trial.sown);
  const state = (at: number) => {
    const { records, entry } = current();
    const before = lastTotal(records, sowing.id, at);
    const low = entry.how === 'new' ? 0 : (before?.total ?? 0);
    const high = sowing.seeds === null ? Infinity : sowing.seeds - (entry.how === 'new' ? (before?.total ?? 0) : 0);
    return { typed: typedCount(records, sowing.id, at, entry.how), before, low, high };
  };
  /** Taps stay between the last total and the seeds sown; whoever must go beyond types the number. */
  const tap = (step: number) => {
    const at = day();
    if (at === null) return;
    const { typed, low, high } = state(at);
    const from = typeof typed === 'number' ? typed + step : low + Math.max(0, step);
    keep(sowing.id, at, step > 0 ? Math.min(from, Math.max(high, low)) : Math.max(from, low));
  };
  minus.addEventListener('click', () => tap(-1));
  plus.addEventListener('click', () => tap(1));
  nc.addEventListener('click', () => {
    const at = day();
    if (at !== null) keep(sowing.id, at, state(at).typed === 'NC' ? null : 'NC');
  });
  input.addEventListener('input', () => {
    const [at, typed] = [day(), typedCountText(input.value)];
    if (at === null) return;
    if (typed === undefined) doubt.textContent = say('notCount');
    else keep(sowing.id, at, typed);
  });
  input.addEventListener('keydown', ({ key }) => {
    if (key === 'Enter') element.nextElementSibling?.querySelector('input')?.focus();
  });
  input.addEventListener('blur', refresh);

  function refresh(): void {
    const at = day();
    for (const control of [minus, input, plus, nc]) control.disabled = at === null;
    const { typed, before } = at === null ? { typed: null, before: null } : state(at);
    const seeds = sowing.seeds === null ? '' : say('of', { seeds: sowing.seeds });
    about.textContent = [seeds, before && say('last', { ...before })].filter(Boolean).join(' · ');
    if (document.activeElement !== input) input.value = typed === null ? '' : String(typed);
    nc.setAttribute('aria-pressed', String(typed === 'NC'));
    const doubts = at === null ? [] : countDoubts(current().records, sowing, at);
    doubt.textContent = doubts.map(({ rule, ...values }) => say(rule, values)).join(' ');
  }
  return { element, refresh };
}
