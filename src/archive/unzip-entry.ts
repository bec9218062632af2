import { Inflate } from 'fflate';
import type { ZipEntry } from './zip-entries.ts';

const HEAD = 0x04034b50;
/** Packed bytes taken at a time: at most a thousand times as many come out of them. */
const STEP = 1024;

/**
 * The bytes of one file of a zip, never more than the zip says: what is longer is cut off there, and not unpacked any
 * further.
 *
 * Source: PKWARE APPNOTE 6.3, section 4.3.7 (local file header); from memory.
 *
 * @throws {Error} where the zip is damaged, or packed in a way that few programs know
 */
export function unzipEntry(zip: Uint8Array, { at, method, packed, size }: ZipEntry): Uint8Array {
  const view = new DataView(zip.buffer, zip.byteOffset, zip.byteLength);
  if (view.getUint32(at, true) !== HEAD) throw new RangeError('unzipEntry needs the head of a file');
  const start = at + 30 + view.getUint16(at + 26, true) + view.getUint16(at + 28, true);
  const data = zip.subarray(start, start + packed);
  if (method === 0) return data.slice(0, size);
  if (method !== 8) throw new RangeError(`unzipEntry knows stored and deflated files, got method ${method}`);

  const bytes = new Uint8Array(size);
  let filled = 0;
  const stream = new Inflate((chunk) => {
    bytes.set(chunk.subarray(0, size - filled), filled);
    filled = Math.min(size, filled + chunk.length);
  });
  for (let from = 0; from < data.length && filled < size; from += STEP) {
    stream.push(data.subarray(from, from + STEP), from + STEP >= data.length);
  }
  return bytes.subarray(0, filled);
}
