import { closeSync, fstatSync, lstatSync, openSync, readdirSync, readSync, realpathSync } from 'node:fs';
import { join, sep } from 'node:path';
import { WHOLE_FILE } from '../trial/file-problems.ts';
import type { FolderProblems } from '../trial/folder-problems.ts';
import { MAX_BYTES } from '../trial/text/decode-text.ts';

/**
 * The files of one folder by name, sorted; files of the subfolders named are in it as `photos/x.jpg`, other
 * subfolders as `raw/` only. A link that leads out of the folder is reported and not followed. Read one after the other
 * without waiting for each: a trial's files are small, and waiting takes longer than reading.
 *
 * @param read names whose bytes are wanted, at most one more than a file may have; others are there with no bytes
 */
export function readFolder(
  folder: string,
  subfolders: readonly string[],
  read: (name: string) => boolean,
  problems: FolderProblems,
): Map<string, Uint8Array> {
  const files = new Map<string, Uint8Array>();
  list('');
  return files;

  function list(below: string): void {
    for (const entry of readdirSync(join(folder, below)).toSorted()) {
      const name = below + entry;
      const path = join(folder, name);
      const kind = kindOf(path);
      if (kind === 'outside') refuseLink(name);
      else if (kind === 'file') files.set(name, read(name) ? firstBytes(path) : new Uint8Array());
      else if (kind === 'folder' && below === '' && subfolders.includes(entry)) list(`${entry}/`);
      else if (kind === 'folder') files.set(`${name}/`, new Uint8Array());
    }
  }

  function kindOf(path: string): 'file' | 'folder' | 'outside' | 'other' {
    const stats = lstatSync(path);
    if (stats.isSymbolicLink()) {
      const target = targetOf(path);
      if (target === null || !target.startsWith(realpathSync(folder) + sep)) return 'outside';
      return kindOf(target);
    }
    return stats.isFile() ? 'file' : stats.isDirectory() ? 'folder' : 'other';
  }

  function refuseLink(name: string): void {
    problems.in(name).error(WHOLE_FILE, {
      rule: 'link-outside',
      message: 'this is a link that leads out of the folder, or nowhere',
      remedy: 'Put the file itself here.',
    });
  }
}

function targetOf(link: string): string | null {
  try {
    return realpathSync(link);
  } catch {
    return null;
  }
}

function firstBytes(path: string): Uint8Array {
  const file = openSync(path, 'r');
  try {
    const { size } = fstatSync(file);
    const bytes = new Uint8Array(Math.min(size, MAX_BYTES + 1));
    let filled = 0;
    while (filled < bytes.length) {
      const read = readSync(file, bytes, filled, bytes.length - filled, filled);
      if (read === 0) break; // the file was cut short meanwhile
      filled += read;
    }
    return bytes.subarray(0, filled);
  } finally {
    closeSync(file);
  }
}
