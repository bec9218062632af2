import type { PlanOptions } from './plan-options.ts';

/**
 * What options (or answers, which take their shape) say, in the shape of a YAML file that says the same: only keys
 * that were given. Days, separated by commas, become a list; the last of them is the day that is compared.
 */
export function planValue({ trial, values }: PlanOptions): Record<string, unknown> {
  const { control, treatment = [], lot, crop, species, author, name, days, day, matters } = values;
  const { container, block, treated, germinated, blind, title, question, varies, base, trays, each, seeds, seed, sown } = values; // prettier-ignore
  const labels = [...(control === undefined ? [] : [control]), ...treatment];
  const list = days?.split(/[,;\s]+/).filter((part) => part !== '');
  const compared = day ?? list?.at(-1);
  const [firstLot] = lot ?? [];
  return given({
    trial: trial ?? undefined,
    title,
    question,
    varies,
    base,
    trays,
    each,
    seeds,
    seed,
    sown,
    authors: author === undefined ? undefined : [author],
    new_people: author !== undefined && name !== undefined ? { [author]: { name } } : undefined,
    lots: lot,
    new_lots: firstLot !== undefined && (crop ?? species) !== undefined ? { [firstLot]: given({ crop, species }) } : undefined, // prettier-ignore
    treatments:
      labels.length === 0
        ? undefined
        : labels.map((label, index) => ({
            id: idOf(label, index),
            label,
            ...(control !== undefined && index === 0 ? { control: 'true' } : {}),
          })),
    sowing: orNothing(given({ container, block, treated })),
    scoring: orNothing(given({ germinated, blind, days: list })),
    outcomes:
      list === undefined && matters === undefined && day === undefined
        ? undefined
        : [given({ id: 'germination', measure: 'germination', day: compared, matters, primary: 'true' })],
  });
}

const given = (values: Readonly<Record<string, unknown>>) =>
  Object.fromEntries(Object.entries(values).filter(([, value]) => value !== undefined));
const orNothing = (values: Readonly<Record<string, unknown>>) =>
  Object.keys(values).length === 0 ? undefined : values;

/** The first words of a label as an id: "Soaked for a day" -> soaked-for-a-day. */
function idOf(label: string, index: number): string {
  const plain = label.normalize('NFKD').replaceAll(/\p{M}/gu, '').toLowerCase();
  const id = plain.replaceAll(/[^a-z0-9]+/g, '-').slice(0, 32).replaceAll(/^-+|-+$/g, ''); // prettier-ignore
  return id === '' || id === 'na' || id === 'nc' ? `t${index + 1}` : id;
}
