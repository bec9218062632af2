import { FileProblems } from './file-problems.ts';
import type { Problem } from './problem.ts';

/** Order in which the files of a folder are reported. */
const FILE_ORDER = [
  'site.yaml',
  'people.yaml',
  'lots.yaml',
  'questions.yaml',
  'trial.yaml',
  'plan.yaml',
  'sowings.csv',
  'key.csv',
  'counts.csv',
  'fates.csv',
  'measurements.csv',
  'weighings.csv',
  'events.csv',
];

/** Gathers what there is to say about the files of one folder. */
export class FolderProblems {
  readonly folder: string;
  readonly #files = new Map<string, FileProblems>();

  /** @param folder path as the person knows it, with forward slashes; empty for the current one */
  constructor(folder: string) {
    this.folder = folder;
  }

  /** @param name within the folder; empty for the folder itself */
  in(name: string): FileProblems {
    const known = this.#files.get(name);
    if (known) return known;
    const path = [this.folder, name].filter((part) => part !== '').join('/');
    const file = new FileProblems(path === '' ? '.' : path);
    this.#files.set(name, file);
    return file;
  }

  /** All problems in file order, within a file from top to bottom. */
  get problems(): Problem[] {
    const rank = (name: string) => (FILE_ORDER.includes(name) ? FILE_ORDER.indexOf(name) : name === '' ? -1 : 99);
    const byName = ([a]: [string, FileProblems], [b]: [string, FileProblems]) =>
      rank(a) - rank(b) || (a < b ? -1 : a > b ? 1 : 0);
    return [...this.#files].sort(byName).flatMap(([, { problems }]) => problems.toSorted(fromTop));
  }

  get hasErrors(): boolean {
    return [...this.#files.values()].some((file) => file.hasErrors);
  }
}

const fromTop = (a: Problem, b: Problem) => (a.line ?? 0) - (b.line ?? 0) || (a.column ?? 0) - (b.column ?? 0);
