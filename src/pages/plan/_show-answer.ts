import type { PlanAnswer } from '../../analysis/planning/plan-answer.ts';
import { chanceChart } from '../../charts/chance-chart.ts';
import type { DrawnChart } from '../../charts/drawn-chart.ts';
import { planRangeChart } from '../../charts/plan-range-chart.ts';
import { tableHtml } from '../../report/table-html.ts';
import type { PlanSpeech } from '../../wording/plan/plan-amounts.ts';
import { planAssumption } from '../../wording/plan/plan-assumption.ts';
import { planSentences } from '../../wording/plan/plan-sentences.ts';
import { planTable } from '../../wording/plan/plan-table.ts';
import { planWarning } from '../../wording/plan/plan-warning.ts';

/** Puts an answer into its place on the page: sentences, what to mind beside them, charts, all numbers. */
export function showAnswer(page: Document, answer: PlanAnswer, unit: string, speech: PlanSpeech): void {
  const [first = '', ...rest] = planSentences(answer, unit, speech);
  const at = (id: string) => page.querySelector<HTMLElement>(`#${id}`);
  tell(at('first'), [first]);
  tell(at('rest'), rest);
  tell(at('assumed'), [planAssumption(answer.design, unit, speech)]);
  tell(
    at('warnings'),
    answer.warnings.map((warning) => planWarning(warning, speech)),
  );
  at('mind')?.toggleAttribute('hidden', answer.warnings.length === 0);
  show(at('chance'), answer.closed.crop === null ? null : chanceChart(answer, speech));
  show(at('range'), planRangeChart(answer, unit, speech));
  const { caption, head, rows } = planTable(answer, unit, speech);
  const numbers = at('numbers');
  if (numbers) numbers.innerHTML = tableHtml({ caption, head, rows });
  numbers?.parentElement?.toggleAttribute('hidden', rows.length === 0);
}

/** One paragraph (or list item) for each sentence. */
export function tell(place: HTMLElement | null, sentences: readonly string[]): void {
  const name = place?.tagName === 'UL' ? 'li' : 'p';
  place?.replaceChildren(
    ...sentences.map((sentence) => Object.assign(place.ownerDocument.createElement(name), { textContent: sentence })),
  );
}

function show(figure: HTMLElement | null, chart: DrawnChart | null): void {
  figure?.toggleAttribute('hidden', chart === null);
  if (!figure || chart === null) return;
  const part = (selector: string) => figure.querySelector<HTMLElement>(selector);
  const [title, subtitle, picture, table] = ['strong', 'figcaption .soft', '.drawing', '.table'].map(part);
  if (title) title.textContent = chart.title;
  if (subtitle) subtitle.textContent = chart.subtitle;
  if (picture) {
    picture.setAttribute('aria-label', chart.description);
    picture.innerHTML = chart.svg; // our own drawing; its words are escaped
  }
  if (table) table.innerHTML = tableHtml({ caption: chart.title, ...chart.table });
}
