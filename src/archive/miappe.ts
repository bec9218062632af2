import type { Analysis } from '../analysis/analysis.ts';
import type { Measure, Person, Site, Trial } from '../trial/trial.ts';
import type { Cell, Column, Table } from './table.ts';

const column = (name: string, meaning: string): Column => ({ name, type: 'string', unit: null, meaning });
const COLUMNS: readonly Column[] = [
  column('section', 'Section of the MIAPPE checklist.'),
  column('of', 'The person, lot, event, sowing or outcome that the value belongs to; empty: the trial.'),
  column('field', 'Name of the field in the MIAPPE 1.2 data model.'),
  column('value', 'Its value; empty: missing.'),
  column('missing', 'What is missing and where it is written; empty where there is a value.'),
];

const SCALES: Readonly<Record<Measure, string>> = {
  germination: '% of seeds sown',
  t50: 'days',
  mgt: 'days',
  maguire: 'seeds per day',
  spread: 'days',
  trait: 'no unit given',
  moisture: '% wet basis',
  storage: '% of seeds sown',
};

type Row = readonly [section: string, of: string | null, field: string, value: Cell, where: string];

/**
 * The fields that MIAPPE 1.2 (Minimum Information About a Plant Phenotyping Experiment) asks of every
 * experiment, one row each, a missing one named with the place to write it. Fields for samples are left out:
 * a trial takes none. Source: MIAPPE_Checklist_Data_Model.tsv of the repository MIAPPE/MIAPPE.
 *
 * @param trial as it may be told (toldTrial)
 * @param address of the report
 * @param files names of the tables with the data
 */
export function miappe(
  trial: Trial,
  analysis: Analysis,
  site: Site,
  address: string,
  files: readonly { readonly name: string; readonly title: string }[],
): Table {
  const rows = [
    ...studyRows(trial, address, files),
    ...trial.authors.flatMap((person) => personRows(trial, person)),
    ...materialRows(trial),
    ...growingRows(trial),
    ...unitRows(trial),
    ...variableRows(trial, analysis),
  ].map(([section, of, field, value, where]) => [section, of, field, value, missing(value, where)]);
  const licence = ['study', null, 'license', trial.licence ?? site.licence, null];
  return { name: 'miappe', title: 'MIAPPE 1.2 checklist', columns: COLUMNS, rows: [...rows, licence] };
}

const missing = (value: Cell, where: string): Cell => (value === null ? `not recorded; ${where}` : null);

function studyRows(
  { title, question, sown, finished, authors, sowing, conditions }: Trial,
  address: string,
  files: readonly { readonly name: string; readonly title: string }[],
): readonly Row[] {
  const institutions = [...new Set(authors.flatMap(({ affiliation }) => affiliation ?? []))].join('; ') || null;
  const condition = (name: string) => conditions[name] ?? null;
  const design = [
    sowing.assignment === 'unknown' ? null : `assigned: ${sowing.assignment}`,
    sowing.treated === 'unknown' ? null : `treated: ${sowing.treated}`,
    sowing.block === null ? null : `block: ${sowing.block}`,
  ].filter((part) => part !== null);
  return [
    ['investigation', null, 'investigationTitle', question, 'trial.yaml, question'],
    ['investigation', null, 'miappeVersion', '1.2', ''],
    ['study', null, 'studyTitle', title, 'trial.yaml, title'],
    ['study', null, 'studyStartDate', sown, 'trial.yaml, sown'],
    ['study', null, 'studyEndDate', finished, 'trial.yaml, finished'],
    ['study', null, 'contactInst', institutions, 'people.yaml, affiliation'],
    ['study', null, 'locationCountry', condition('country'), 'trial.yaml, conditions, country'],
    ['study', null, 'siteName', condition('site'), 'trial.yaml, conditions, site'],
    ['study', null, 'growthFacilityDesc', condition('place'), 'trial.yaml, conditions, place'],
    ['study', null, 'expeDesignDesc', design.join('; ') || null, 'trial.yaml, sowing'],
    ['study', null, 'obsUnitDesc', sowing.container, 'trial.yaml, sowing, container'],
    ...fileRows(address, files),
  ];
}

function fileRows(
  address: string,
  files: readonly { readonly name: string; readonly title: string }[],
): readonly Row[] {
  if (files.length === 0) {
    const where = 'counts.csv or measurements.csv, once there are any';
    return ['dataFileLink', 'dataFileDesc'].map((field): Row => ['data file', null, field, null, where]);
  }
  return files.flatMap(({ name, title }): Row[] => [
    ['data file', name, 'dataFileLink', `${address}data/${name}`, ''],
    ['data file', name, 'dataFileDesc', title, ''],
  ]);
}

function personRows({ roles }: Trial, { id, name, affiliation }: Person): readonly Row[] {
  return [
    ['person', id, 'personName', name, 'people.yaml, name'],
    ['person', id, 'personRole', ['author', ...(roles[id] ?? [])].join('; '), ''],
    ['person', id, 'personAffiliation', affiliation, 'people.yaml, affiliation'],
  ];
}

function materialRows({ lots }: Trial): readonly Row[] {
  return lots.flatMap(({ id, species, supplier, accession }): Row[] => [
    ['biological material', id, 'biologicalMaterialId', id, ''],
    ['biological material', id, 'organism', species, 'lots.yaml, species'],
    ['biological material', id, 'materialSource', accession ?? supplier, 'lots.yaml, accession or supplier'],
  ]);
}

function growingRows({ conditions, varies, treatments, sown, events }: Trial): readonly Row[] {
  const given = Object.entries(conditions);
  const environment = given.length === 0 ? [[null, null] as const] : given;
  return [
    ...environment.flatMap(([name, value]): Row[] => [
      ['environment', name, 'envParam', name, 'trial.yaml, conditions'],
      ['environment', name, 'envParamValue', value, 'trial.yaml, conditions'],
    ]),
    ['experimental factor', null, 'expeFactorType', varies, 'trial.yaml, varies'],
    ...treatments.map(({ id, label }): Row => ['experimental factor', id, 'expeFactorValues', label, '']),
    ['event', 'sowing', 'eventType', 'sowing', ''],
    ['event', 'sowing', 'eventDate', sown, 'trial.yaml, sown'],
    ...events.flatMap(({ what, date, day }, index): Row[] => {
      const when = date ?? (day === null ? null : `day ${day} after sowing`);
      return [
        ['event', String(index + 1), 'eventType', what, ''],
        ['event', String(index + 1), 'eventDate', when, 'trial.yaml or events.csv, date'],
      ];
    }),
  ];
}

function unitRows({ sowings, sowing: { container } }: Trial): readonly Row[] {
  const type = container === null ? 'sowing' : `sowing: ${container}`;
  const units = sowings.flatMap(({ id, treatment }): Row[] => [
    ['observation unit', id, 'obsUnitId', id, ''],
    ['observation unit', id, 'obsUnitType', type, ''],
    ['observation unit', id, 'obsUnitFactorValue', treatment, 'no treatment, or kept apart until the last count'],
  ]);
  if (units.length > 0) return units;
  return ['obsUnitId', 'obsUnitType'].map((field): Row => ['observation unit', null, field, null, 'sowings.csv']);
}

function variableRows({ outcomes, traits, scoring }: Trial, { results }: Analysis): readonly Row[] {
  const variables = results.length > 0 ? results.map((result) => ({ ...result, id: result.outcome })) : outcomes;
  if (variables.length === 0) return [['observed variable', null, 'variableId', null, 'trial.yaml, outcomes']];
  return variables.flatMap(({ id, measure, column }): Row[] => {
    const unit = results.find(({ outcome }) => outcome === id)?.unit;
    const trait = traits.find((known) => known.column === column);
    const isMeasured = measure === 'trait' || measure === 'moisture';
    const method = isMeasured ? measure : scoring.germinated && `a seed counts as germinated: ${scoring.germinated}`;
    return [
      ['observed variable', id, 'variableId', id, ''],
      ['observed variable', id, 'traitName', column ?? measure, ''],
      ['observed variable', id, 'methodName', measure === 'trait' ? null : method, methodPlace(measure)],
      ['observed variable', id, 'scaleName', unit || (trait?.unit ?? SCALES[measure]), ''],
    ];
  });
}

const methodPlace = (measure: Measure): string =>
  measure === 'trait' ? 'see the conditions and the report' : 'trial.yaml, scoring, germinated';
