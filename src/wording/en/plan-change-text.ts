import type { PlanChange } from '../../analysis/analysis.ts';

/** One difference from the plan, as a sentence: "The plan said day 14; the count is of day 15." */
export function planChangeText({ what, planned, done }: PlanChange): string {
  const path = what.split('.');
  const field = path.at(-1) ?? what;
  if (what === 'digest') return 'The plan file was changed after it had been fixed.';
  if (what === 'key_sha256') return 'The key is not the one that was sealed with the plan.';
  if (field === 'left-out') return `${path[1]} was planned and left out: ${done}.`;
  const thing = THINGS[path[0] ?? ''] ?? path[0] ?? what;
  if (path.length === 2 && path[0] !== 'sowing' && path[0] !== 'scoring') {
    return planned === null
      ? `The ${thing} ${done} was added; the plan did not have it.`
      : `The ${thing} ${planned} of the plan was dropped.`;
  }
  if (path[0] === 'outcomes' && field === 'day' && isDay(planned) && isDay(done)) {
    return `The plan said day ${planned}; the count is of day ${done}.`;
  }
  const name = path.length === 3 ? ` of ${thing} ${path[1]}` : '';
  return `The ${FIELDS[field] ?? field.replaceAll('_', ' ')}${name}: the plan said ${said(planned)}; now it is ${said(done)}.`;
}

const isDay = (text: string | null) => text !== null && /^[\d.]+$/.test(text);
const said = (text: string | null) => (text === null ? 'nothing' : `“${text}”`);

const THINGS: Readonly<Record<string, string>> = {
  lots: 'lot',
  treatments: 'treatment',
  outcomes: 'outcome',
  sowings: 'sowing',
  sowing: 'sowing',
  scoring: 'scoring',
};

const FIELDS: Readonly<Record<string, string>> = {
  question: 'question',
  varies: 'thing changed on purpose',
  sown: 'day of sowing',
  matters: 'smallest difference that matters',
  primary: 'primary outcome',
  pool: 'pooling of lots',
  soak_hours: 'hours of soak',
  days: 'planned count days',
  counts: 'way of counting',
  germinated: 'meaning of “came up”',
  blind: 'counting without knowing which is which',
  assignment: 'way of placing',
  treated: 'way of treating',
};
