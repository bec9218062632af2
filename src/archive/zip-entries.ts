export interface ZipEntry {
  readonly name: string;
  /** A symbolic link of Unix: unpacked, it could lead out of the folder. */
  readonly isLink: boolean;
  readonly isEncrypted: boolean;
  /** 0: stored as it is; 8: deflated; others are rare. */
  readonly method: number;
  /** Bytes in the zip, and unpacked as the zip says. */
  readonly packed: number;
  readonly size: number;
  /** Where its own head stands in the zip. */
  readonly at: number;
}

const END = 0x06054b50;
const ENTRY = 0x02014b50;
const LONGEST_COMMENT = 65_535;

/**
 * What the directory of a zip says of its files; nothing is unpacked.
 *
 * Source: PKWARE APPNOTE 6.3, sections 4.3.12 (central directory) and 4.3.16 (its end); the kind of a file stands in the
 * upper half of its external attributes where Unix made it; from memory.
 *
 * @returns null where it is no zip, is damaged, or is of the large kind (Zip64), which no trial needs
 */
export function zipEntries(zip: Uint8Array): readonly ZipEntry[] | null {
  const view = new DataView(zip.buffer, zip.byteOffset, zip.byteLength);
  const end = endOf(view);
  if (end === null) return null;
  const count = view.getUint16(end + 10, true);
  let at = view.getUint32(end + 16, true);
  const entries: ZipEntry[] = [];
  for (let index = 0; index < count; index++) {
    if (at + 46 > view.byteLength || view.getUint32(at, true) !== ENTRY) return null;
    const [nameLength, extra, comment] = [28, 30, 32].map((offset) => view.getUint16(at + offset, true)) as [number, number, number]; // prettier-ignore
    const kind = view.getUint32(at + 38, true) >>> 28;
    entries.push({
      name: nameOf(zip.subarray(at + 46, at + 46 + nameLength)),
      isLink: view.getUint8(at + 5) === 3 && kind === 0xa,
      isEncrypted: (view.getUint16(at + 8, true) & 1) === 1,
      method: view.getUint16(at + 10, true),
      packed: view.getUint32(at + 20, true),
      size: view.getUint32(at + 24, true),
      at: view.getUint32(at + 42, true),
    });
    at += 46 + nameLength + extra + comment;
  }
  return entries;
}

function endOf(view: DataView): number | null {
  const last = view.byteLength - 22;
  for (let at = last; at >= Math.max(0, last - LONGEST_COMMENT); at--) {
    if (view.getUint32(at, true) === END) return at;
  }
  return null;
}

/** Not every program that writes UTF-8 says so. */
function nameOf(bytes: Uint8Array): string {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder('latin1').decode(bytes);
  }
}
