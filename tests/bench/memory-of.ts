import { readdirSync, readFileSync } from 'node:fs';

/** Bytes in a page of memory, as Linux counts on most machines. */
const PAGE = 4096;

/**
 * Memory that a process and all that it started hold at this moment, MB; what two of them share counts twice. Linux only.
 *
 * @throws {Error} where there is no /proc
 */
export function memoryOf(process: number): number {
  const all = readdirSync('/proc').flatMap((name) => (/^\d+$/.test(name) ? stateOf(name) : []));
  const family = new Set([process]);
  for (let before = 0; before < family.size;) {
    before = family.size;
    for (const { id, parent } of all) if (family.has(parent)) family.add(id);
  }
  const pages = all.reduce((sum, one) => sum + (family.has(one.id) ? one.pages : 0), 0);
  return (pages * PAGE) / 2 ** 20;
}

function stateOf(process: string): { id: number; parent: number; pages: number }[] {
  try {
    const fields = readFileSync(`/proc/${process}/stat`, 'utf8')
      .replace(/^.*\) /s, '')
      .split(' '); // from the third on
    return [{ id: Number(process), parent: Number(fields[1]), pages: Number(fields[21]) }];
  } catch {
    return []; // it has ended
  }
}
