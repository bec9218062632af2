import type { Site } from '../trial/trial.ts';
import type { UiKey, Words } from '../wording/words.ts';
import type { PlanOptions } from './plan-options.ts';

/** Questions on a terminal; the prompts of @inquirer/prompts fit. */
export interface Ask {
  input(config: { message: string; default?: string; required?: boolean }): Promise<string>;
  select(config: {
    message: string;
    choices: readonly { name: string; value: string }[];
    default?: string;
  }): Promise<string>;
  confirm(config: { message: string; default: boolean }): Promise<boolean>;
}

const VARIES = ['soak', 'drying', 'storage', 'light', 'temperature', 'medium', 'dressing', 'age', 'other'];
const TREATED = ['each-sowing', 'in-batches', 'at-once'] as const;
const TRAYS = ['usual', 'even', 'uneven'] as const;

/** Asks for everything that the options leave open, in the order in which a trial is thought out. */
export async function askPlan(
  { trial, values }: PlanOptions,
  ask: Ask,
  site: Site,
  words: Words,
): Promise<PlanOptions> {
  const { ui } = words;
  const text = async (known: string | undefined, key: UiKey, usual?: string) =>
    known ??
    (await ask.input({ message: ui[key], ...(usual === undefined ? { required: true } : { default: usual }) }));
  const choice = async (known: string | undefined, key: UiKey, choices: readonly { name: string; value: string }[]) =>
    known ?? (await ask.select({ message: ui[key], choices }));

  const title = await text(values.title, 'planning.ask.title');
  const question = await text(values.question, 'planning.ask.question');
  const varies = await choice(values.varies, 'planning.ask.varies', VARIES.map((value) => ({ name: value, value }))); // prettier-ignore
  const control = await text(values.control, 'planning.ask.control');
  const treatment = values.treatment ?? [await text(undefined, 'planning.ask.treatment')];
  const author = await choice(values.author, 'planning.ask.author', [
    ...Object.values(site.people).map(({ id, name }) => ({ name, value: id })),
    { name: '…', value: '' },
  ]).then((id) => (id === '' ? text(undefined, 'planning.ask.author', 'me') : id));
  const name = site.people[author] ? undefined : await text(values.name, 'planning.ask.name');
  const lot = values.lot ?? [await lotAsked()];
  const isNew = lot.length === 1 && !site.lots[lot[0] ?? ''];
  const crop = isNew ? await text(values.crop, 'planning.ask.crop') : undefined;
  const species = isNew ? await text(values.species, 'planning.ask.species') : undefined;
  const container = await text(values.container, 'planning.ask.container', ui['planning.ask.containerUsual']);
  const treated = await choice(values.treated, 'planning.ask.treated', TREATED.map((value) => ({ name: ui[`treated.${value}`], value }))); // prettier-ignore
  const block = await text(values.block, 'planning.ask.block', '');
  const germinated = await text(values.germinated, 'planning.ask.germinated');
  const days = await text(values.days, 'planning.ask.days', '5, 8, 11, 14');
  const matters = await text(values.matters, 'planning.ask.matters', '10');
  const base = await text(values.base, 'planning.ask.base', '80');
  const trays = await choice(values.trays, 'planning.ask.trays', TRAYS.map((value) => ({ name: ui[`planning.trays.${value}`], value }))); // prettier-ignore
  const blind = values.blind ?? ((await ask.confirm({ message: ui['planning.ask.blind'], default: true })) ? 'yes' : 'no'); // prettier-ignore
  const optional = { ...(name === undefined ? {} : { name }), ...(crop === undefined ? {} : { crop }), ...(species === undefined ? {} : { species }), ...(block.trim() === '' ? {} : { block }) }; // prettier-ignore
  const asked = { title, question, varies, control, treatment, author, lot, container, treated, germinated };
  return {
    trial: trial ?? slugOf(title),
    values: { ...values, ...asked, days, matters, base, trays, blind, ...optional },
  };

  async function lotAsked(): Promise<string> {
    const known = Object.values(site.lots).map(({ id, crop, cultivar }) => ({
      name: `${id} (${[crop, cultivar].filter(Boolean).join(', ')})`,
      value: id,
    }));
    const chosen = known.length === 0 ? '' : await ask.select({ message: ui['planning.ask.lot'], choices: [...known, { name: ui['planning.ask.otherLot'], value: '' }] }); // prettier-ignore
    return chosen === '' ? text(undefined, 'planning.ask.newLot') : chosen;
  }
}

function slugOf(title: string): string {
  const plain = title.normalize('NFKD').replaceAll(/\p{M}/gu, '').toLowerCase();
  return plain.replaceAll(/[^a-z0-9]+/g, '-').slice(0, 40).replaceAll(/^-+|-+$/g, ''); // prettier-ignore
}
