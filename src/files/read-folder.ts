import { lstat, open, readdir, realpath } from 'node:fs/promises';
import { join, sep } from 'node:path';
import { WHOLE_FILE } from '../trial/file-problems.ts';
import type { FolderProblems } from '../trial/folder-problems.ts';
import { MAX_BYTES } from '../trial/text/decode-text.ts';

/**
 * The files of one folder by name, sorted; files of the subfolders named are in it as `photos/x.jpg`, other
 * subfolders as `raw/` only. A link that leads out of the folder is reported and not followed.
 *
 * @param read names whose bytes are wanted, at most one more than a file may have; others are there with no bytes
 */
export async function readFolder(
  folder: string,
  subfolders: readonly string[],
  read: (name: string) => boolean,
  problems: FolderProblems,
): Promise<Map<string, Uint8Array>> {
  const files = new Map<string, Uint8Array>();
  await list('');
  return files;

  async function list(below: string): Promise<void> {
    for (const entry of (await readdir(join(folder, below))).toSorted()) {
      const name = below + entry;
      const path = join(folder, name);
      const kind = await kindOf(path);
      if (kind === 'outside') refuseLink(name);
      else if (kind === 'file') files.set(name, read(name) ? await firstBytes(path) : new Uint8Array());
      else if (kind === 'folder' && below === '' && subfolders.includes(entry)) await list(`${entry}/`);
      else if (kind === 'folder') files.set(`${name}/`, new Uint8Array());
    }
  }

  async function kindOf(path: string): Promise<'file' | 'folder' | 'outside' | 'other'> {
    const stats = await lstat(path);
    if (stats.isSymbolicLink()) {
      const [root, target] = await Promise.all([realpath(folder), realpath(path).catch(() => null)]);
      if (target === null || !target.startsWith(root + sep)) return 'outside';
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

async function firstBytes(path: string): Promise<Uint8Array> {
  const file = await open(path);
  try {
    const { size } = await file.stat();
    const bytes = new Uint8Array(Math.min(size, MAX_BYTES + 1));
    let filled = 0;
    while (filled < bytes.length) {
      const { bytesRead } = await file.read(bytes, filled, bytes.length - filled, filled);
      if (bytesRead === 0) break; // the file was cut short meanwhile
      filled += bytesRead;
    }
    return bytes.subarray(0, filled);
  } finally {
    await file.close();
  }
}
