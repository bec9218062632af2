import { parseArgs } from 'node:util';
import { recheck } from '../archive/recheck.ts';
import type { Recheck } from '../archive/recompute.ts';
import { readPublished } from '../files/read-published.ts';
import type { Terminal } from './terminal.ts';

const USAGE = `npm run --silent recheck -- <folder or zip of a published trial>

Works a published trial out again from its raw files, and compares: the digest of every file, every figure of
analysis.json, and the tables made from the raw files. Needs no site, only the files of /trials/<id>/data/.

Ends with 0 where all is the same, 1 where a figure or file differs or is missing, 2 where it is no published trial,
not safe to open, or of a newer format.
`;

/**
 * The command `recheck`: prints what differs from what was published, figure by figure.
 *
 * @returns the exit code: 0 same, 1 differs, 2 no published trial
 */
export async function runRecheck(args: readonly string[], terminal: Terminal): Promise<0 | 1 | 2> {
  const path = pathOf(args);
  if (path === 'help') {
    terminal.out(USAGE);
    return 0;
  }
  if (path === null) {
    terminal.err(`Name one folder or zip of a published trial.\n\n${USAGE}`);
    return 2;
  }
  const files = await readPublished(path.name);
  const found = typeof files === 'string' ? files : recheck(files);
  if (typeof found === 'string') {
    terminal.err(printable(`${path.name}: ${found}\n`));
    return 2;
  }
  terminal.out(printable(reportOf(found)));
  return found.files.length + found.differences.length === 0 ? 0 : 1;
}

function pathOf(args: readonly string[]): { readonly name: string } | 'help' | null {
  try {
    const options = { help: { type: 'boolean', default: false } } as const;
    const { values, positionals } = parseArgs({ args: [...args], allowPositionals: true, options });
    const [name] = positionals;
    return values.help ? 'help' : name !== undefined && positionals.length === 1 ? { name } : null;
  } catch {
    return null;
  }
}

function reportOf({ trial, figures, files, differences }: Recheck): string {
  if (files.length + differences.length === 0) {
    const found = figures === 0 ? 'nothing is compared before the last count' : `all ${figures} figures agree`;
    return `${trial}: ${found}, and every file has its published digest.\n`;
  }
  const lines = [
    ...files.map(({ file, message }) => `  ${file} ${message}`),
    ...differences.map(
      ({ path, published, recomputed }) => `  ${path}: published ${shown(published)}, recomputed ${shown(recomputed)}`,
    ),
  ];
  return `${trial}: not the same as published.\n${lines.join('\n')}\n`;
}

function shown(value: unknown): string {
  if (value === undefined) return 'nothing';
  const text = JSON.stringify(value);
  return text.length > 120 ? `${text.slice(0, 119)}…` : text;
}

/** Without letters that could steer a terminal. */
const printable = (text: string): string => text.replace(/[^\P{Cc}\n]|[\u202A-\u202E\u2066-\u2069]/gu, '\uFFFD');
