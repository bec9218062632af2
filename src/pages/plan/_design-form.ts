import { planDesign, type PlanDesign } from '../../analysis/planning/plan-design.ts';
import { spreadChoices } from '../../analysis/planning/spread-choices.ts';
import type { PlanSpeech } from '../../wording/plan/plan-amounts.ts';

/** What the form offers to compare; height and mass are traits with a unit. */
export type FormMeasure = 'germination' | 't50' | 'height' | 'mass';

const MEASURE: Readonly<Record<FormMeasure, PlanDesign['measure']>> = {
  germination: 'germination',
  t50: 't50',
  height: 'trait',
  mass: 'trait',
};
/** Symbols of units, the same in every language. */
const UNIT: Readonly<Record<FormMeasure, string>> = { germination: '', t50: '', height: 'mm', mass: 'g' };
/** What the form starts with for each. */
const USUAL: Readonly<Record<FormMeasure, readonly [base: string, matters: string]>> = {
  germination: ['80', '10'],
  t50: ['6', '1'],
  height: ['40', '5'],
  mass: ['2', '0.3'],
};

/** The form: what it asks for is labelled and shown by the measure; `read` gives the design as it stands. */
export interface DesignForm {
  read(): { readonly design: PlanDesign; readonly unit: string };
}

/**
 * Brings the form of the page to life.
 *
 * @param changed called after every change
 */
export function designForm(form: HTMLFieldSetElement, { say }: PlanSpeech, changed: () => void): DesignForm {
  const field = (name: string) => form.elements.namedItem(name) as HTMLInputElement & HTMLSelectElement;
  const value = (name: string) => field(name).valueAsNumber;
  const kind = () => field('measure').value as FormMeasure;
  const measure = () => MEASURE[kind()];

  const label = () => {
    for (const name of ['base', 'matters', 'spread'] as const) {
      const text = form.querySelector(`label[for=${name}]`);
      if (text) text.textContent = say(`planPage.${name}.${kind()}`, {});
    }
    for (const part of form.querySelectorAll<HTMLElement>('[data-for]')) {
      part.hidden = !part.dataset.for?.split(' ').includes(measure());
    }
  };
  /** The number of the plain choice; where the number was changed by hand it stays. */
  const choose = () => {
    const chosen = spreadChoices(measure(), value('base')).find(({ choice }) => choice === field('choice').value);
    if (chosen && Number.isFinite(chosen.spread)) field('spread').value = String(Number(chosen.spread.toPrecision(3)));
  };
  const start = () => {
    [field('base').value, field('matters').value] = USUAL[kind()];
    if (field('choice').value === 'own') field('choice').value = 'usual';
  };

  form.addEventListener('input', ({ target }) => {
    if (target === field('measure')) start();
    if (target === field('spread')) field('choice').value = 'own';
    label();
    choose();
    changed();
  });
  label();
  choose();

  return {
    read: () => ({
      design: planDesign({
        measure: measure(),
        base: value('base'),
        matters: value('matters'),
        units: value('units'),
        seeds: value('seeds'),
        spread: value('spread'),
        crops: value('crops'),
        timing:
          measure() === 't50'
            ? { every: value('every'), seedSpread: value('base') / 4, germination: value('germination') }
            : null,
      }),
      unit: UNIT[kind()],
    }),
  };
}
