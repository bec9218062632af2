import { parse } from 'csv-parse/sync';
import { expect, test } from 'vitest';
import { publishedDemo } from '../support/published-demo.ts';

const trials = await publishedDemo();
const named = trials.map((published) => [published.trial.id, published] as const);

/** Cardinality 1 or more in MIAPPE_Checklist_Data_Model.tsv 1.2 (repository MIAPPE/MIAPPE), but for samples: none are taken. */
const MANDATORY = [
  'investigationTitle', 'miappeVersion', 'studyTitle', 'studyStartDate', 'contactInst', 'locationCountry', 'siteName',
  'expeDesignDesc', 'obsUnitDesc', 'growthFacilityDesc', 'personName', 'personRole', 'personAffiliation', 'dataFileLink',
  'dataFileDesc', 'biologicalMaterialId', 'organism', 'envParam', 'envParamValue', 'expeFactorType', 'expeFactorValues',
  'eventType', 'eventDate', 'obsUnitId', 'obsUnitType', 'variableId', 'traitName', 'methodName', 'scaleName',
]; // prettier-ignore

test.each(named)('%s: every mandatory field is there, with a value or named as missing', (_id, { trial, text }) => {
  const rows: Record<string, string>[] = parse(text('miappe.csv'), { columns: true });
  const fields = new Set(rows.map(({ field }) => field));
  expect(MANDATORY.filter((field) => !fields.has(field))).toEqual([]);
  for (const row of rows) expect((row.value === '') !== (row.missing === ''), JSON.stringify(row)).toBe(true);
  expect(rows.filter(({ field }) => field === 'obsUnitId')).toHaveLength(Math.max(1, trial.sowings.length));
});

test('what the growers did not write down is named with the place to write it', () => {
  const peas = trials.find(({ trial }) => trial.id === 'peas-soaked-balcony');
  const rows: Record<string, string>[] = parse(peas?.text('miappe.csv') ?? '', { columns: true });
  const missing = rows.filter(({ missing }) => missing !== '').map((row) => [row.field, row.missing]);
  expect(missing).toMatchInlineSnapshot(`
    [
      [
        "locationCountry",
        "not recorded; trial.yaml, conditions, country",
      ],
      [
        "siteName",
        "not recorded; trial.yaml, conditions, site",
      ],
    ]
  `);
});

test('no treatment of a trial that is counted blind is told', () => {
  const growing = trials.find(({ trial }) => trial.id === 'leek-wet-start');
  const rows: Record<string, string>[] = parse(growing?.text('miappe.csv') ?? '', { columns: true });
  expect(new Set(rows.filter(({ field }) => field === 'obsUnitFactorValue').map(({ value }) => value))).toEqual(
    new Set(['']),
  );
});
