import type { Words } from '../wording/words.ts';
import { checkCount } from './check-count.ts';
import type { Course } from './germination-course.ts';

/** "Packet: day 3: 2 of 100, day 7: 55 of 100.": the thick line of a treatment in words. */
export function courseValues(name: string, { together }: Course, words: Words): string {
  const values = together.map((check) =>
    words.say('chart.onDay', { day: words.number(check.day), value: checkCount(check, words) }),
  );
  return words.say('chart.named', { name, values: values.join(', ') || words.ui['table.notChecked'] });
}
