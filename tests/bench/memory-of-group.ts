import { readdirSync, readFileSync } from 'node:fs';

/** Bytes in a page of memory, as Linux counts on most machines. */
const PAGE = 4096;

/** Memory that all processes of a group hold at this moment, MB; what two of them share counts twice. Linux only. */
export function memoryOfGroup(group: number): number {
  const pages = readdirSync('/proc').map((name) => (/^\d+$/.test(name) ? pagesOf(name, group) : 0));
  return (pages.reduce((sum, of) => sum + of, 0) * PAGE) / 2 ** 20;
}

function pagesOf(process: string, group: number): number {
  try {
    const fields = readFileSync(`/proc/${process}/stat`, 'utf8')
      .replace(/^.*\) /s, '')
      .split(' '); // from the third on
    return Number(fields[2]) === group ? Number(fields[21]) : 0;
  } catch {
    return 0; // it has ended
  }
}
