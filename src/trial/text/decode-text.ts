import type { Refusal } from '../refusal.ts';

export const MAX_BYTES = 20_000_000;

export interface DecodedText {
  /** Unicode NFC, without byte order mark. */
  readonly text: string;
  readonly encoding: 'UTF-8' | 'UTF-8 with BOM' | 'UTF-16' | 'Windows-1252';
}

/**
 * The text of a file in any encoding that spreadsheets write: UTF-8 with or without byte order mark,
 * UTF-16 with one, else Windows-1252. What is no text (a workbook, a picture) is refused.
 */
export function decodeText(bytes: Uint8Array): DecodedText | Refusal {
  if (bytes.length > MAX_BYTES) {
    return {
      rule: 'file-too-large',
      message: 'the file is larger than 20 MB, more than any trial needs',
      remedy: 'Keep only the rows of this trial; pictures belong in photos/.',
    };
  }
  if (startsWith(bytes, [0x50, 0x4b, 0x03, 0x04]) || startsWith(bytes, [0xd0, 0xcf, 0x11, 0xe0])) {
    return {
      rule: 'workbook',
      message: 'this is a spreadsheet workbook (or a zip) under another name, not text',
      remedy: 'Open it in the spreadsheet and save the sheet as CSV UTF-8; renaming does not change what is inside.',
    };
  }

  const decoded = decode(bytes);
  if (decoded === null || decoded.text.includes('\0')) {
    return {
      rule: 'not-text',
      message: 'this is not a text file, or its letters are broken',
      remedy: 'Save it again as CSV UTF-8 (tables) or as plain text UTF-8.',
    };
  }
  return { ...decoded, text: decoded.text.normalize('NFC') };
}

function decode(bytes: Uint8Array): DecodedText | null {
  const littleEndian = startsWith(bytes, [0xff, 0xfe]);
  if (littleEndian || startsWith(bytes, [0xfe, 0xff])) {
    const text = strictly(littleEndian ? 'utf-16le' : 'utf-16be', bytes);
    return text === null ? null : { text, encoding: 'UTF-16' };
  }
  const text = strictly('utf-8', bytes);
  if (text !== null) return { text, encoding: startsWith(bytes, [0xef, 0xbb, 0xbf]) ? 'UTF-8 with BOM' : 'UTF-8' };
  if (isBrokenUtf8(bytes)) return null;
  return { text: new TextDecoder('windows-1252').decode(bytes), encoding: 'Windows-1252' };
}

/** UTF-8 with a few bytes lost: most letters beyond ASCII are whole, which Windows-1252 texts hardly ever look like. */
function isBrokenUtf8(bytes: Uint8Array): boolean {
  const letters = new TextDecoder('utf-8').decode(bytes).match(/[^\p{ASCII}]/gu) ?? [];
  const broken = letters.filter((letter) => letter === '\uFFFD').length;
  return letters.length - broken > broken;
}

function strictly(encoding: string, bytes: Uint8Array): string | null {
  try {
    return new TextDecoder(encoding, { fatal: true }).decode(bytes);
  } catch {
    return null;
  }
}

function startsWith(bytes: Uint8Array, signature: readonly number[]): boolean {
  return signature.every((byte, index) => bytes[index] === byte);
}
