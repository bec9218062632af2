import type { BenchRecords } from '../../trial/bench/bench.ts';
import { benchKey } from '../../trial/bench/bench-key.ts';
import { dayAt } from '../../trial/bench/day-at.ts';
import { typedName } from '../../trial/bench/typed-name.ts';
import { typedTrait } from '../../trial/bench/typed-trait.ts';
import { typedValue } from '../../trial/bench/typed-value.ts';
import { at, made } from './_elements.ts';
import { fillSowings } from './_fill-sowings.ts';
import type { OpenSession } from './_open-session.ts';
import { say } from './_page-words.ts';

/** The form for one measurement; the plant counts on by itself. Gives back what shows the traits that are there. */
export function measureForm(current: () => OpenSession, keep: (records: BenchRecords) => void): () => void {
  const field = (name: string) => at<HTMLInputElement>(`m-${name}`);
  fillSowings('m-sowing', current().trial, null);
  at('m-keep').addEventListener('click', () => {
    const { records, trial, entry } = current();
    const sowing = trial.sowings.find(({ id }) => `s${id}` === field('sowing').value);
    const typed = typedTrait(field('trait').value, field('unit').value);
    const known = typed && records.traits.find(({ column }) => column.toLowerCase() === typed.column.toLowerCase());
    const trait = known ?? typed;
    const day = sowing ? dayAt(sowing, entry.when, trial.sown) : null;
    const value = typedValue(field('value').value);
    const isBelow = typeof value === 'number' && value < 0 && !(known?.unit ?? typed?.unit)?.startsWith('°');
    const tell = (text: string): void => void (at('m-note').textContent = text);
    if (!sowing || !trait || day === null || typeof value !== 'number' || isBelow) return tell(say('badMeasure'));
    if (typed?.unit && known && known.unit !== typed.unit && known.unit !== null) {
      return tell(say('otherUnit', { trait: known.column, unit: known.unit }));
    }
    const plant = typedName(field('plant').value);
    const key = benchKey(sowing.id, day, plant);
    const withUnit = { column: trait.column, unit: trait.unit ?? typed?.unit ?? null };
    const row = { sowing: sowing.id, day, plant, values: { ...records.measurements[key]?.values, [trait.column]: value } }; // prettier-ignore
    const others = records.traits.filter(({ column }) => column !== trait.column);
    const traits = known ? records.traits.map((each) => (each === known ? withUnit : each)) : [...others, withUnit];
    keep({ ...records, traits, measurements: { ...records.measurements, [key]: row } });
    const named = sowing.label ?? sowing.id;
    tell(say('measured', { sowing: named, plant: plant ?? say('whole'), trait: trait.column, value: `${value} ${withUnit.unit ?? ''}`.trim() })); // prettier-ignore
    if (/^\d{1,6}$/.test(plant ?? '')) field('plant').value = String(Number(plant) + 1);
    field('value').value = '';
    field('value').focus();
  });
  return () => {
    const { traits } = current().records;
    at('m-traits').replaceChildren(...traits.map(({ column }) => made('option', '', { value: column })));
    const [only] = traits;
    if (traits.length === 1 && only && field('trait').value === '') {
      field('trait').value = only.column;
      field('unit').value = only.unit ?? '';
    }
  };
}
