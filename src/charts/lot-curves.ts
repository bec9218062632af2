import type { Analysis, Result } from '../analysis/analysis.ts';
import type { Trial } from '../trial/trial.ts';
import type { Words } from '../wording/words.ts';
import { chartTitle } from './chart-title.ts';
import type { Chart } from './chart.ts';
import { checkCount } from './check-count.ts';
import { courseValues } from './course-values.ts';
import { checkDays, germinationCourses, type Course } from './germination-course.ts';
import { germinationPanels } from './germination-panels.ts';
import { NARROW, type RowRoom } from './row-layout.ts';
import { shareText } from './step-line.ts';

/** More shares than this no title holds. */
const MOST_IN_TITLE = 12;

interface LotCourses {
  readonly lot: string;
  readonly name: string;
  readonly courses: readonly Course[];
}

/**
 * Cumulative germination of several lots, a small plot each side by side, drawn as `germinationCurves` draws one. The
 * table holds the thick lines; what each sowing counted stands in the table of all counts (`countsTable`).
 *
 * @param room `WIDE` for paper, where more small plots stand abreast
 */
export function lotCurves(
  trial: Trial,
  analysis: Analysis,
  result: Result,
  lots: readonly string[],
  words: Words,
  room: RowRoom = NARROW,
): Chart {
  const all = lots.map((lot): LotCourses => {
    const stored = result.groups.find((group) => group.lot === lot)?.stored ?? null;
    return { lot, name: words.lotName(trial, lot), courses: germinationCourses(trial, result, lot, stored) };
  });
  const explained = trial.treatments.flatMap(({ id }) => {
    const found = all.flatMap(({ courses }) => courses.filter(({ treatment }) => treatment === id));
    const sowings = found.flatMap((course) => course.sowings);
    return found.length > 0 ? [{ treatment: id, together: [], sowings }] : [];
  });
  const labels = explained.map(({ treatment }) => words.treatmentLabel(trial, treatment));
  const single = all.every(({ courses }) => courses.every(({ sowings }) => sowings.length === 1));
  const contents = all.map(({ lot, name, courses }) => {
    const counted = result.days[lot];
    const isEarly = counted !== undefined && counted < Math.max(...checkDays(courses));
    return { title: name, thick: courses, thin: courses.filter(isSeveral), counted: isEarly ? counted : null };
  });
  return {
    kind: 'germination',
    title: result.comparisons.some(({ lot }) => lot === 'all')
      ? sharesOf(all, labels, words)
      : chartTitle(
          trial,
          analysis,
          result,
          result.comparisons.filter(({ lot }) => lots.includes(lot)),
          words,
        ),
    subtitle: words.say(single ? 'chart.germination.subtitleSingle' : 'chart.germination.subtitle', {
      unit: words.unitWord(trial),
    }),
    description: words.say('chart.germination.description', {
      treatments: words.list(labels),
      values: all
        .flatMap(({ name, courses }) =>
          courses.map((course) =>
            courseValues(`${name}, ${words.treatmentLabel(trial, course.treatment)}`, course, words),
          ),
        )
        .join(' '),
    }),
    table: tableOf(trial, all, words),
    further: 'counts',
    spec: germinationPanels(trial, contents, explained, words, room),
  };
}

/** A single sowing's thin line would run under the thick one. */
const isSeveral = ({ sowings }: Course) => sowings.length > 1 || sowings.some(({ leftOut }) => leftOut);

/** What came up in the end, lot by lot, in the order of the treatments; the differences, drawn above, have the finding as title. */
function sharesOf(all: readonly LotCourses[], labels: readonly string[], words: Words): string {
  const ends = all.map(({ name, courses }) => ({
    name,
    checks: courses.flatMap(({ together }) => together.at(-1) ?? []),
  }));
  const isTold = ends.every(({ checks }) => checks.length === labels.length);
  if (!isTold || labels.length * ends.length > MOST_IN_TITLE) return words.ui['chart.germination.title'];
  const lots = ends.map(({ name, checks }) =>
    words.say('chart.germination.lot', {
      lot: name,
      values: checks.map((check) => shareText(check, words)).join(', '),
    }),
  );
  return words.say('chart.germination.titleLots', { treatments: labels.join(', '), lots: lots.join('; ') });
}

function tableOf(trial: Trial, all: readonly LotCourses[], words: Words): Chart['table'] {
  const days = checkDays(all.flatMap(({ courses }) => courses));
  return {
    names: 2,
    head: [
      words.ui['table.lot'],
      words.ui['table.treatment'],
      ...days.map((day) => `${words.ui['table.day']} ${words.number(day)}`),
    ],
    rows: all.flatMap(({ name, courses }) =>
      courses.map(({ treatment, together }) => [
        name,
        words.treatmentLabel(trial, treatment),
        ...days.map((day) => {
          const check = together.find((found) => found.day === day);
          return check ? checkCount(check, words) : words.ui['table.notChecked'];
        }),
      ]),
    ),
  };
}
