import type { Pooled } from '../analysis/pooled.ts';
import type { Cell, Column, Table } from './table.ts';

/** The tables of a question's data folder: the trials that were put together and, where there are any, those that were not. */
export function pooledTables(pooled: Pooled): readonly Table[] {
  const others: readonly (readonly Cell[])[] = [
    ...pooled.leftOut.map((trial) => [...toldCells(trial), 'left out', trial.reason, trial.found]),
    ...pooled.unreported.map((trial) => [...toldCells(trial), trial.status, null, null]),
  ];
  return [
    {
      name: 'trials',
      title: 'Trials of the question, with the differences that they found',
      columns: [...TOLD, ...FIGURES(pooled.unit)],
      rows: pooled.trials.map((trial) => [
        ...toldCells(trial),
        trial.lot,
        trial.outcome,
        trial.treatment,
        trial.control,
        trial.units.treatment,
        trial.units.control,
        trial.seeds?.treatment.count ?? null,
        trial.seeds?.treatment.seeds ?? null,
        trial.seeds?.control.count ?? null,
        trial.seeds?.control.seeds ?? null,
        trial.estimate,
        trial.basis,
        trial.lower,
        trial.upper,
        trial.se,
        trial.weight,
      ]),
    },
    ...(others.length === 0
      ? []
      : [
          {
            name: 'not-pooled',
            title: 'Trials of the question that are left out or not reported yet',
            columns: [...TOLD, ...WHY],
            rows: others,
          },
        ]),
  ];
}

const toldCells = ({ trial, title, growers, sown, from }: Pooled['trials'][number] | Pooled['leftOut'][number] | Pooled['unreported'][number]): readonly Cell[] => [
  trial,
  title,
  growers.join('; '),
  sown,
  from,
]; // prettier-ignore

const column = (name: string, type: Column['type'], meaning: string, unit: string | null = null): Column => ({
  name,
  type,
  unit,
  meaning,
});

const TOLD: readonly Column[] = [
  column('trial', 'string', 'Id of the trial, or name of the zip of another site.'),
  column('title', 'string', 'Title of the trial.'),
  column('growers', 'string', 'Who grew it.'),
  column('sown', 'date', 'Day of sowing.'),
  column('from', 'string', 'Address of its report where it was published on another site.'),
];

const FIGURES = (unit: string): readonly Column[] => [
  column('lot', 'string', 'Seed lot, or "all": pooled over the lots of the trial.'),
  column('outcome', 'string', 'Outcome of the trial.'),
  column('treatment', 'string', 'Id of its treatment.'),
  column('control', 'string', 'Id of its control.'),
  column('treatment_units', 'integer', 'Units under the treatment.'),
  column('control_units', 'integer', 'Units under the control.'),
  column('treatment_count', 'integer', 'Seeds that germinated under the treatment.', 'seeds'),
  column('treatment_seeds', 'integer', 'Seeds sown under the treatment.', 'seeds'),
  column('control_count', 'integer', 'Seeds that germinated under the control.', 'seeds'),
  column('control_seeds', 'integer', 'Seeds sown under the control.', 'seeds'),
  column('estimate', 'number', 'Treatment minus control.', unit),
  column('basis', 'string', 'interval: limits as the report gives them; half-seeds: one tray of a kind, so limits of half as many seeds.'),
  column('lower', 'number', 'Lower limit of the 95 % interval that se is made from.', unit),
  column('upper', 'number', 'Upper limit of the 95 % interval that se is made from.', unit),
  column('se', 'number', 'Half the width of the interval divided by 1.959964.', unit),
  column('weight', 'number', 'Share of the trial in the pooled estimate; empty where nothing is pooled.', '%'),
]; // prettier-ignore

const WHY: readonly Column[] = [
  column('state', 'string', 'left out, planned, growing or abandoned.'),
  column('reason', 'string', 'Why it is left out.'),
  column('found', 'string', 'What was found in place of what was wanted.'),
];
