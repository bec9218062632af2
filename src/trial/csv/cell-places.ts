/**
 * Finds line and column (both from 1, columns in characters) of a byte in a UTF-8 text, whatever ends its lines.
 */
export function cellPlaces(bytes: Uint8Array): (at: number) => { readonly line: number; readonly column: number } {
  const starts = [0];
  bytes.forEach((byte, index) => {
    if (byte === 10 || (byte === 13 && bytes[index + 1] !== 10)) starts.push(index + 1);
  });
  if ((starts.at(-1) ?? 0) >= bytes.length && starts.length > 1) starts.pop(); // no line behind the last line end

  return (at) => {
    let [low, high] = [0, starts.length - 1];
    while (low < high) {
      const middle = Math.ceil((low + high) / 2);
      if ((starts[middle] ?? 0) <= at) low = middle;
      else high = middle - 1;
    }
    const start = starts[low] ?? 0;
    const before = at === start ? '' : new TextDecoder().decode(bytes.subarray(start, at));
    return { line: low + 1, column: before.length + 1 };
  };
}
