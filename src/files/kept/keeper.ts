import { createHash } from 'node:crypto';
import { mkdirSync, renameSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { readKept, withDigest } from './read-kept.ts';

export interface Keeper {
  /** What was made from `inputs` before, or is made now and kept. */
  bytes(kind: string, inputs: string, make: () => Promise<Uint8Array>): Promise<Uint8Array>;
  text(kind: string, inputs: string, make: () => Promise<string>): Promise<string>;
  /**
   * The file in which it is kept, for `readKept`.
   *
   * @throws {Error} of the file system, where it cannot be written
   */
  file(kind: string, inputs: string, make: () => Promise<string>): Promise<string>;
}

/**
 * Keeps what takes long to make from one build to the next, by the digest of its inputs and of what makes it: a
 * changed input or a changed maker is another file, so nothing stale is found. Each file begins with the
 * digest of the rest and is moved into place whole: one that was cut short or changed is made anew, and two builds at once do
 * not meet. Where the folder cannot be written, things are made and not kept.
 *
 * @param folder safe to delete at any time
 * @param maker  digest of the code and packages that make the things (`makerDigest`)
 */
export function keeper(folder: string, maker: string): Keeper {
  function place(kind: string, inputs: string): string {
    const key = createHash('sha256').update(`${maker}\n${kind}\n${inputs}`).digest('hex');
    return join(folder, kind, key.slice(0, 2), key);
  }
  async function bytes(kind: string, inputs: string, make: () => Promise<Uint8Array>): Promise<Uint8Array> {
    const file = place(kind, inputs);
    const kept = readKept(file);
    if (kept) return kept;
    const made = await make();
    try {
      keep(file, made);
    } catch {
      // a full disk or a folder that is read only: the next build makes it again
    }
    return made;
  }
  return {
    bytes,
    text: async (kind, inputs, make) =>
      new TextDecoder().decode(await bytes(kind, inputs, async () => new TextEncoder().encode(await make()))),
    file: async (kind, inputs, make) => {
      const file = place(kind, inputs);
      if (!readKept(file)) keep(file, new TextEncoder().encode(await make()));
      return file;
    },
  };
}

let written = 0;

function keep(file: string, content: Uint8Array): void {
  const whole = `${file}.${process.pid}-${written++}`;
  mkdirSync(dirname(file), { recursive: true });
  writeFileSync(whole, withDigest(content));
  renameSync(whole, file);
}
