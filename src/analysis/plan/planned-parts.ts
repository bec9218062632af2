import { dayText, textOf, yesOrNo, type PlanPart } from './plan-part.ts';

type Row = Readonly<Record<string, unknown>>;

/**
 * What the frozen copy in plan.yaml says, part by part, with the defaults of trial.yaml filled in. A
 * section that the copy does not hold was not planned and gives no parts. In a blind trial the copy
 * holds no treatments of sowings, so none are compared.
 *
 * @param lots ids of the trial's lots, for days that are given by lot
 */
export function plannedParts(copy: Row, lots: readonly string[]): PlanPart[] {
  const { question, varies, sown } = copy;
  const top = Object.entries({ question, varies, sown }).flatMap(([key, value]) => {
    const text = textOf(value);
    return text === null ? [] : [[key, text] as const];
  });
  const sections: PlanPart[] = [
    ...(top.length === 0 ? [] : [{ path: '', name: '', fields: Object.fromEntries(top) }]),
    ...(Array.isArray(copy.lots) ? copy.lots.map((lot) => lotPart(String(lot))) : []),
    ...rowsOf(copy.treatments).map(treatmentPart),
    ...(isRow(copy.sowing) ? [sowingPlanPart(copy.sowing)] : []),
    ...(isRow(copy.scoring) ? [scoringPart(copy.scoring)] : []),
    ...outcomeParts(rowsOf(copy.outcomes), lots),
  ];
  const rows = rowsOf(copy.sowings);
  const blind = rows.every(({ treatment }) => textOf(treatment) === null);
  return [...sections, ...rows.map((row) => sowingPart(row, blind))];
}

const isRow = (value: unknown): value is Row => typeof value === 'object' && value !== null && !Array.isArray(value);
const rowsOf = (value: unknown): Row[] => (Array.isArray(value) ? value.filter(isRow) : []);

const lotPart = (lot: string): PlanPart => ({ path: `lots.${lot}`, name: lot, fields: {} });

function treatmentPart(row: Row): PlanPart {
  const { id, label, control, ...rest } = row;
  return {
    path: `treatments.${id}`,
    name: textOf(label) ?? String(id),
    fields: {
      label: textOf(label),
      control: yesOrNo(control),
      soak_hours: textOf(rest.soak_hours),
      handling: textOf(rest.handling),
      temperature: textOf(rest.temperature),
      moisture: textOf(rest.moisture),
    },
  };
}

const sowingPlanPart = (row: Row): PlanPart => ({
  path: 'sowing',
  name: 'sowing',
  fields: {
    container: textOf(row.container),
    assignment: textOf(row.assignment) ?? 'unknown',
    treated: textOf(row.treated) ?? 'unknown',
    block: textOf(row.block),
  },
});

const scoringPart = (row: Row): PlanPart => ({
  path: 'scoring',
  name: 'scoring',
  fields: {
    germinated: textOf(row.germinated),
    blind: typeof row.blind === 'boolean' ? yesOrNo(row.blind) : (textOf(row.blind) ?? 'unknown'),
    days: textOf(row.days),
    counts: textOf(row.counts) ?? 'cumulative',
  },
});

function outcomeParts(rows: readonly Row[], lots: readonly string[]): PlanPart[] {
  const noneIsPrimary = !rows.some(({ primary }) => primary === true);
  return rows.map((row, index) => ({
    path: `outcomes.${row.id}`,
    name: String(row.id),
    fields: {
      measure: textOf(row.measure),
      column: textOf(row.column),
      day: dayText(row.day, lots),
      matters: textOf(row.matters),
      primary: yesOrNo(noneIsPrimary ? index === 0 : row.primary),
      pool: yesOrNo(row.pool),
    },
  }));
}

/** Lot, treatment and block are always part of the design; the other columns where the plan gave them. */
function sowingPart(row: Row, blind: boolean): PlanPart {
  const design = {
    lot: textOf(row.lot),
    ...(blind ? {} : { treatment: textOf(row.treatment) }),
    block: textOf(row.block),
  };
  const others = { seeds: row.seeds, mass: row.mass, batch: row.batch, tray: row.tray, position: row.position };
  const given = Object.entries({ ...others, label: row.label, sown: row.sown }).filter(([, value]) => textOf(value));
  return {
    path: `sowings.${row.sowing}`,
    name: String(row.sowing),
    fields: { ...design, ...Object.fromEntries(given.map(([key, value]) => [key, textOf(value)])) },
  };
}
