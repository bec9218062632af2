import { designFaults } from '../../analysis/planning/design-faults.ts';
import { planAnswer, type PlanAnswer } from '../../analysis/planning/plan-answer.ts';
import { planWarnings } from '../../analysis/planning/plan-warnings.ts';
import { simulated } from '../../analysis/planning/simulated.ts';
import { designFault } from '../../wording/plan/design-fault.ts';
import { designForm } from './_design-form.ts';
import { planSpeech } from './_plan-speech.ts';
import { showAnswer, tell } from './_show-answer.ts';
import { simulation, TRIALS } from './_simulation.ts';

/** Milliseconds without a change after which a design is simulated. */
const PAUSE = 250;

/**
 * The plan page: the formula answers every change at once, the simulation when typing pauses. What is said aloud is the
 * first sentence, when it is final.
 */
export function planPage(page: Document): void {
  const form = page.querySelector<HTMLFieldSetElement>('#design');
  const result = page.querySelector<HTMLElement>('#result');
  const bar = page.querySelector<HTMLProgressElement>('#result progress');
  const state = page.querySelector<HTMLElement>('#state');
  const aloud = page.querySelector<HTMLElement>('#aloud');
  if (!form || !result || !bar || !state || !aloud) return;
  const speech = planSpeech(page);
  const number = (value: number) => speech.number(value);
  let latest: { readonly answer: PlanAnswer; readonly unit: string } | null = null;
  let waiting: ReturnType<typeof setTimeout> | undefined;

  const simulate = simulation({
    progress: (done) => {
      bar.value = done / TRIALS;
      bar.hidden = false;
      state.textContent = speech.say('planPage.working', { done: number(done), all: number(TRIALS) });
    },
    done: (found) => {
      bar.hidden = true;
      state.textContent = speech.say('planPage.worked', { all: number(TRIALS) });
      if (latest === null) return;
      const outcome = simulated(found);
      const answer = { ...latest.answer, simulated: outcome.crop || outcome.together ? outcome : null };
      showAnswer(page, { ...answer, warnings: planWarnings(answer) }, latest.unit, speech);
      aloud.textContent = page.querySelector('#first')?.textContent ?? '';
    },
    failed: () => {
      bar.hidden = true;
      state.textContent = speech.say('planPage.noWorker', {});
    },
  });

  const change = () => {
    clearTimeout(waiting);
    simulate(null); // what was simulated answers the design before this one
    bar.hidden = true;
    state.textContent = '';
    const { design, unit } = designs.read();
    const faults = designFaults(design);
    result.hidden = faults.length > 0;
    page.querySelector('#faulty')?.toggleAttribute('hidden', faults.length === 0);
    tell(
      page.querySelector<HTMLElement>('#faults'),
      faults.map((fault) => designFault(fault, design.measure, speech)),
    );
    latest = faults.length > 0 ? null : { answer: planAnswer(design, { trials: 0 }), unit };
    if (latest === null) return;
    showAnswer(page, latest.answer, unit, speech);
    const { crop, together } = latest.answer.closed;
    if (crop ?? together) waiting = setTimeout(() => simulate(design), PAUSE);
  };
  const designs = designForm(form, speech, change);
  form.hidden = false;
  change();
}
