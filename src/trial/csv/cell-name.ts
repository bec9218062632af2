/** Address of a cell as spreadsheets show it: column 2, row 7 (both from 0 and 1) -> `C7`. */
export function cellName(column: number, row: number): string {
  let letters = '';
  for (let rest = column + 1; rest > 0; rest = Math.floor((rest - 1) / 26)) {
    letters = String.fromCharCode(65 + ((rest - 1) % 26)) + letters;
  }
  return `${letters}${row}`;
}
