/** A heading without its unit: `height (mm)` -> `height`. */
export function columnName(written: string): string {
  return written.replace(/ ?[([][^()[\]]*[)\]]$/, '');
}
