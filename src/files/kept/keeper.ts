import { createHash } from 'node:crypto';
import { mkdirSync, readFileSync, renameSync, utimesSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';

export interface Keeper {
  /** What was made from `inputs` before, or is made now and kept. */
  bytes(kind: string, inputs: string, make: () => Promise<Uint8Array>): Promise<Uint8Array>;
  text(kind: string, inputs: string, make: () => Promise<string>): Promise<string>;
}

const DIGEST = 64;

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
  async function bytes(kind: string, inputs: string, make: () => Promise<Uint8Array>): Promise<Uint8Array> {
    const key = sha256(`${maker}\n${kind}\n${inputs}`);
    const file = join(folder, kind, key.slice(0, 2), key);
    const kept = intact(file);
    if (kept) return kept;
    const made = await make();
    keep(file, made);
    return made;
  }
  return {
    bytes,
    text: async (kind, inputs, make) =>
      new TextDecoder().decode(await bytes(kind, inputs, async () => new TextEncoder().encode(await make()))),
  };
}

const sha256 = (content: string | Uint8Array): string => createHash('sha256').update(content).digest('hex');

function intact(file: string): Uint8Array | null {
  try {
    const content = readFileSync(file);
    const rest = content.subarray(DIGEST);
    if (content.toString('latin1', 0, DIGEST) !== sha256(rest)) return null;
    utimesSync(file, new Date(), new Date()); // for `prune`
    return new Uint8Array(rest);
  } catch {
    return null;
  }
}

let written = 0;

function keep(file: string, content: Uint8Array): void {
  const whole = `${file}.${process.pid}-${written++}`;
  try {
    mkdirSync(dirname(file), { recursive: true });
    writeFileSync(whole, Buffer.concat([Buffer.from(sha256(content), 'latin1'), content]));
    renameSync(whole, file);
  } catch {
    // a full disk or a folder that is read only: the next build makes it again
  }
}
