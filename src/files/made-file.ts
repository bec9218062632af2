import { createHash } from 'node:crypto';
import type { PackagedFile } from '../archive/package-resource.ts';
import type { Table } from '../archive/table.ts';

/** A file that is made from what was read, with its digest. */
export function madeFile(name: string, content: string | Uint8Array, table: Table | null = null): PackagedFile {
  const bytes = typeof content === 'string' ? new TextEncoder().encode(content) : content;
  return { name, bytes, sha256: createHash('sha256').update(bytes).digest('hex'), table };
}
