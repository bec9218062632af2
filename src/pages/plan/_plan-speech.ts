import { number as germanNumber } from '../../wording/de/number.ts';
import { pValue as germanP } from '../../wording/de/p-value.ts';
import { number } from '../../wording/en/number.ts';
import { pValue } from '../../wording/en/p-value.ts';
import { fill } from '../../wording/fill.ts';
import type { PlanSpeech } from '../../wording/plan/plan-amounts.ts';
import type { UiKey } from '../../wording/words.ts';

/** The words that the page was built with, from its block of data, and numbers as its language prints them. */
export function planSpeech(page: Document): PlanSpeech {
  const texts: Readonly<Partial<Record<UiKey, string>>> = JSON.parse(page.querySelector('#texts')?.textContent ?? '{}');
  const isGerman = page.documentElement.lang.startsWith('de');
  return {
    say: (key, values) => fill(texts[key] ?? '', key, values),
    number: isGerman ? germanNumber : number,
    pValue: isGerman ? germanP : pValue,
  };
}
