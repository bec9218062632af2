const TYPES: Readonly<Record<string, string>> = {
  csv: 'text/csv',
  json: 'application/json',
  R: 'text/plain; charset=utf-8',
  SHA256SUMS: 'text/plain; charset=utf-8',
  yaml: 'text/yaml',
  zip: 'application/zip',
};

/** Content type of a published file, by its name. */
export const mediaType = (name: string): string => TYPES[name.split('.').at(-1) ?? ''] ?? 'application/octet-stream';
