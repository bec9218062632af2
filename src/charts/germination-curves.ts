import type { Analysis, Result } from '../analysis/analysis.ts';
import type { Trial } from '../trial/trial.ts';
import type { Words } from '../wording/words.ts';
import { chartTitle } from './chart-title.ts';
import type { Chart } from './chart.ts';
import { courseValues } from './course-values.ts';
import { checkCount } from './check-count.ts';
import { checkDays, germinationCourses, type Check, type Course } from './germination-course.ts';
import { germinationPanels, type PanelContent } from './germination-panels.ts';
import { NARROW, type RowRoom } from './row-layout.ts';
import { germinationPlot } from './germination-plot.ts';

/** As many treatments as have a colour, dash and shape of their own. */
const MOST_IN_ONE_PLOT = 6;

/**
 * Cumulative germination of one lot: thin steps a sowing, thick steps a treatment, marks at the checks, of 100 seeds sown.
 * Between two checks nothing is known, so nothing slopes. More than six treatments get a small plot each, with the control in it.
 *
 * @param lot    id of a lot of the trial
 * @param stored storage time of the test to draw, years; null for sowings outside a storage series
 * @param room `WIDE` for paper, where more small plots stand abreast
 */
export function germinationCurves(
  trial: Trial,
  analysis: Analysis,
  result: Result,
  lot: string,
  words: Words,
  stored: number | null = null,
  room: RowRoom = NARROW,
): Chart {
  const courses = germinationCourses(trial, result, lot, stored);
  const comparisons = result.measure === 'germination' ? result.comparisons.filter((found) => found.lot === lot) : [];
  const counted = result.measure === 'germination' ? (result.days[lot] ?? null) : null;
  const single = courses.every(({ sowings }) => sowings.length === 1);
  return {
    kind: 'germination',
    title: comparisons.length
      ? chartTitle(trial, analysis, result, comparisons, words)
      : words.ui['chart.germination.title'],
    subtitle: words.say(single ? 'chart.germination.subtitleSingle' : 'chart.germination.subtitle', {
      unit: words.unitWord(trial),
    }),
    description: words.say('chart.germination.description', {
      treatments: words.list(courses.map(({ treatment }) => words.treatmentLabel(trial, treatment))),
      values: courses
        .map((course) => courseValues(words.treatmentLabel(trial, course.treatment), course, words))
        .join(' '),
    }),
    table: tableOf(trial, courses, words),
    spec:
      courses.length > MOST_IN_ONE_PLOT
        ? germinationPanels(trial, ...eachWithControl(trial, courses, words), words, room)
        : germinationPlot(trial, courses, words, counted),
  };
}

/** A plot for each treatment with the control in it, and the control's lines for the key. */
function eachWithControl(trial: Trial, courses: readonly Course[], words: Words): [PanelContent[], Course[]] {
  const controls = new Set(trial.treatments.flatMap(({ id, control }) => (control ? [id] : [])));
  const control = courses.filter(({ treatment }) => controls.has(treatment));
  const contents = courses
    .filter(({ treatment }) => !controls.has(treatment))
    .map((course) => {
      const title = words.treatmentLabel(trial, course.treatment);
      return { title, thick: [...control, course], thin: [course], counted: null };
    });
  return [contents, control];
}

function tableOf(trial: Trial, courses: readonly Course[], words: Words): Chart['table'] {
  const days = checkDays(courses);
  const cells = (checks: readonly Check[]) =>
    days.map((day) => {
      const check = checks.find((found) => found.day === day);
      return check ? checkCount(check, words) : words.ui['table.notChecked'];
    });
  return {
    names: 2,
    head: [
      words.ui['table.treatment'],
      words.ui['table.sowing'],
      ...days.map((day) => `${words.ui['table.day']} ${words.number(day)}`),
    ],
    rows: courses.flatMap(({ treatment, together, sowings }) => {
      const label = words.treatmentLabel(trial, treatment);
      return [
        [label, words.ui['chart.together'], ...cells(together)],
        ...sowings.map(({ sowing, leftOut, checks }) => [
          label,
          leftOut ? `${sowing.id} (${words.ui['chart.leftOut']})` : sowing.id,
          ...cells(checks),
        ]),
      ];
    }),
  };
}
