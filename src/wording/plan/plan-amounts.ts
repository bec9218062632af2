import type { PlanDesign } from '../../analysis/planning/plan-design.ts';
import type { Words } from '../words.ts';

/** What the words of a plan need of a language: light enough for a script that runs in the reader's browser. */
export type PlanSpeech = Pick<Words, 'say' | 'number' | 'pValue'>;

/** How the numbers of a plan are said. */
export interface PlanAmounts {
  /** As the grower gave it: no digit more, none less. */
  given(value: number): string;
  /** A difference as given, after "of". */
  ofSize(value: number): string;
  /** A difference as given. */
  asGiven(value: number): string;
  /** A difference that can be shown, rounded up, so that it promises no more than was computed. */
  roundedUp(value: number): string;
  /** A worked-out difference, rounded: whole per 100, one digit for days, two figures for traits. */
  size(value: number): string;
  sizeError(value: number, error: number): string;
  /** A chance in running text: "about 43 of 100". */
  rate(share: number): string;
}

/**
 * Numbers of a plan in words.
 *
 * @param unit of a trait: "mm", "g"
 */
export function planAmounts(
  measure: PlanDesign['measure'],
  unit: string,
  { say, number }: Pick<PlanSpeech, 'say' | 'number'>,
): PlanAmounts {
  const keyed = (form: 'size' | 'ofSize', text: string) =>
    measure === 't50'
      ? say(text === '1' ? `answer.${form}.t50One` : `answer.${form}.t50`, { number: text })
      : say(`answer.${form}.${measure}`, { number: text, unit });
  return {
    given: (value) => number(value),
    ofSize: (value) => keyed('ofSize', number(value)),
    asGiven: (value) => keyed('size', number(value)),
    size: (value) => keyed('size', number(value, digits(measure, value))),
    roundedUp: (value) => {
      const step = 10 ** -digits(measure, value);
      return keyed('size', number(Math.ceil(value / step - 1e-9) * step, digits(measure, value)));
    },
    sizeError: (value, error) => {
      const places = measure === 'trait' ? Math.max(0, digits(measure, error) - 1) : digits(measure, error) + 1;
      return keyed(
        'size',
        say('answer.table.sizeError', { size: number(value, places), error: number(error, places) }),
      );
    },
    rate: (share) => {
      if (share > 0.995) return say('answer.rateMost', {});
      if (share < 0.005) return say('answer.rateLeast', {});
      return say('answer.rate', { number: number(Math.round(100 * share)) });
    },
  };
}

/** Digits after the point: two figures of a trait. */
function digits(measure: PlanDesign['measure'], value: number): number {
  if (measure !== 'trait') return measure === 't50' ? 1 : 0;
  return value > 0 ? Math.min(6, Math.max(0, 1 - Math.floor(Math.log10(value)))) : 0;
}
