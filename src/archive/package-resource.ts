import type { Column, Table } from './table.ts';

export interface PackagedFile {
  readonly name: string;
  readonly bytes: Uint8Array;
  /** Lower-case hexadecimal. */
  readonly sha256: string;
  /** The table in it; null for raw files and other kinds. */
  readonly table: Table | null;
}

const MEDIA: Readonly<Record<string, string>> = {
  csv: 'text/csv',
  json: 'application/json',
  yaml: 'application/yaml',
  R: 'text/x-r',
};

/** One file of a data package (Data Package standard 2.0), with the schema of its table where it holds one. */
export function packageResource({ name, bytes, sha256, table }: PackagedFile) {
  const format = name.split('.').at(-1) ?? '';
  const mediatype = MEDIA[format];
  return {
    name: name.toLowerCase(),
    path: name,
    ...(table && { type: 'table', title: table.title }),
    format: format.toLowerCase(),
    ...(mediatype && { mediatype }),
    ...(table && { encoding: 'utf-8' }),
    bytes: bytes.length,
    hash: `sha256:${sha256}`,
    ...(table && { schema: { fields: table.columns.map(field), missingValues: [''] } }),
  };
}

const field = ({ name, type, unit, meaning }: Column) => ({
  name,
  type,
  description: meaning,
  ...(unit !== null && { 'fairsown:unit': unit }),
});
