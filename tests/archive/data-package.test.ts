/**
 * datapackage.json against the published text of the Data Package standard 2.0: pages Data Package, Data Resource,
 * Table Schema and Glossary (repository frictionlessdata/datapackage, content/docs/specifications, commit 0830934,
 * Glossary at 015ab8c; read, not from memory). Every MUST that bears on what is written here, and the SHOULDs on names and licences.
 */
import { createHash } from 'node:crypto';
import { parse } from 'csv-parse/sync';
import { expect, test } from 'vitest';
import { publishedDemo } from '../support/published-demo.ts';

interface Field {
  readonly name: string;
  readonly type: string;
}
interface Resource {
  readonly name: string;
  readonly path: string;
  readonly data?: unknown;
  readonly type?: string;
  readonly bytes: number;
  readonly hash: string;
  readonly schema?: { readonly fields: readonly Field[]; readonly missingValues: readonly string[] };
}

const trials = (await publishedDemo()).map(({ trial, files, text }) => {
  const descriptor: Record<string, unknown> = JSON.parse(text('datapackage.json'));
  return { id: trial.id, files, text, descriptor, resources: descriptor.resources as readonly Resource[] };
});

test.each(trials)('$id: the package has what the standard asks of one', ({ descriptor, resources }) => {
  expect(resources.length).toBeGreaterThan(0);
  expect(descriptor.$schema).toBe('https://datapackage.org/profiles/2.0/datapackage.json');
  expect(descriptor.name).toMatch(/^[a-z0-9._-]+$/);
  expect(typeof descriptor.id).toBe('string');
  expect(descriptor.homepage).toMatch(/^https?:\/\/./);
  for (const licence of descriptor.licenses as Record<string, string>[]) expect(licence.name ?? licence.path).toBeTruthy(); // prettier-ignore
  for (const person of descriptor.contributors as Record<string, unknown>[]) {
    expect(person.title).toBeTruthy();
    if (person.path !== undefined) expect(person.path).toMatch(/^https?:\/\/./);
    expect(Array.isArray(person.roles)).toBe(true);
  }
});

test.each(trials)(
  '$id: every resource is there, named once, by a safe path, with its size and hash',
  ({ files, resources }) => {
    expect(new Set(resources.map(({ name }) => name)).size).toBe(resources.length);
    for (const { name, path, data, bytes, hash } of resources) {
      expect(name).toMatch(/^[a-z0-9._-]+$/);
      expect(data).toBeUndefined(); // one and only one of path and data
      expect(path).toMatch(/^(?![/.])(?!.*\.\.)[^\\]+$/);
      const file = files.find((candidate) => candidate.name === path);
      expect(file?.bytes.length, path).toBe(bytes);
      expect(
        `sha256:${createHash('sha256')
          .update(file?.bytes ?? '')
          .digest('hex')}`,
      ).toBe(hash);
    }
  },
);

const TYPES: Readonly<Record<string, RegExp>> = {
  string: /^[^]*$/,
  number: /^-?\d+(\.\d+)?([eE][+-]?\d+)?$/, // Table Schema, type number with its default decimalChar
  integer: /^-?\d+$/,
  date: /^\d{4}-\d\d-\d\d$/, // default format: ISO 8601 date
};

test.each(trials)(
  '$id: tables have the fields of their schemas, in order, and values of their types',
  ({ resources, text }) => {
    const tables = resources.filter(({ type }) => type !== undefined);
    expect(tables.length).toBeGreaterThanOrEqual(2);
    for (const { type, path, schema } of tables) {
      expect(type).toBe('table');
      const fields = schema?.fields ?? [];
      expect(new Set(fields.map(({ name }) => name)).size).toBe(fields.length);
      const [head, ...rows]: string[][] = parse(text(path), { bom: true });
      expect(head, path).toEqual(fields.map(({ name }) => name)); // fieldsMatch is exact where it is not given
      for (const row of rows) {
        for (const [index, cell] of row.entries()) {
          if (schema?.missingValues.includes(cell)) continue;
          expect(cell, `${path} ${fields[index]?.name}`).toMatch(TYPES[fields[index]?.type ?? ''] ?? /$^/);
        }
      }
    }
  },
);

test('quantities carry their unit', () => {
  const fields = trials.flatMap(({ resources }) => resources.flatMap(({ schema }) => schema?.fields ?? []));
  for (const field of fields.filter(({ type }) => type === 'number' || type === 'integer')) {
    expect(field).toHaveProperty(['fairsown:unit']);
  }
});
