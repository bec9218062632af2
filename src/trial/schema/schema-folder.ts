/** Address under which a site publishes the JSON Schemas of its files, without a slash at the end. */
export function schemaFolder(base: string): string {
  return `${base.replace(/\/$/, '')}/schema`;
}
