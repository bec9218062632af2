import { DATA_FILES } from '../trial/check-folder.ts';
import { isPortableName } from '../trial/text/is-portable-name.ts';
import { shown } from '../trial/text/shown.ts';
import { unzipped } from './unzipped.ts';
import { zipEntries } from './zip-entries.ts';

export interface UnzippedTrial {
  /** Name of its folder, which is to be its id. */
  readonly id: string;
  /** Bytes by name within the trial's folder: only files that are read. */
  readonly files: ReadonlyMap<string, Uint8Array>;
  /** Names of files that nothing reads, which are not unpacked. */
  readonly ignored: readonly string[];
}

const READ: readonly string[] = [...DATA_FILES, 'report.mdx', 'report.md'];
/**
 * The one trial in a zip that a member sent, wherever in it its folder stands. Nothing is written. Only files that are
 * read come out of it, under names that are the same everywhere.
 *
 * @param name of the zip's file, which names the trial where no folder in it does
 * @returns a sentence that says why, where it is refused
 */
export function unzippedTrial(zip: Uint8Array, name: string): UnzippedTrial | string {
  const entries = zipEntries(zip);
  if (entries === null) return 'It cannot be read as a zip; it may be damaged.';
  const link = entries.find(({ isLink }) => isLink);
  if (link) return `It holds a link, ${shown(link.name)}; put the file itself there.`;
  if (entries.some(({ isEncrypted }) => isEncrypted))
    return 'It is locked with a password; zip the folder without one.';
  const all = unzipped(zip);
  if (typeof all === 'string') return all;

  const trials = [...all.keys()].filter((file) => /(^|\/)trial\.yaml$/.test(file));
  const [first] = trials;
  if (first === undefined) return 'It holds no trial.yaml, so there is no trial in it.';
  if (trials.length > 1) return `It holds ${trials.length} trials; put each into a zip of its own.`;
  const root = first.slice(0, -'trial.yaml'.length);

  const files = new Map<string, Uint8Array>();
  const ignored: string[] = [];
  for (const [path, bytes] of all) {
    const file = path.startsWith(root) ? path.slice(root.length) : null;
    if (file !== null && (READ.includes(file) || /^photos\/[^/]+$/.test(file))) files.set(file, bytes);
    else ignored.push(path);
  }
  const names = [...files.keys()];
  const odd = names.find((file) => !isPortableName(file.replace('photos/', '')));
  if (odd !== undefined) return `It holds a file named ${shown(odd)}, which not every computer can write; rename it.`;
  if (new Set(names.map((file) => file.normalize().toLowerCase())).size < names.length) {
    return 'It holds two files whose names differ only in capitals; rename one.';
  }
  return { id: root.split('/').at(-2) ?? folderOf(entries.map((entry) => entry.name)) ?? bare(name), files, ignored };
}

/** The one folder that holds everything, if there is one. */
function folderOf(names: readonly string[]): string | null {
  const own = names.filter((name) => !name.startsWith('__MACOSX/'));
  const folder = own[0]?.split('/')[0] ?? '';
  return folder !== '' && own.every((name) => name.startsWith(`${folder}/`)) ? folder : null;
}

const bare = (name: string) => name.replace(/\.zip$/i, '');
