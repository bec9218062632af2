import type { Analysis } from '../analysis/analysis.ts';
import { DATA_FILES } from '../trial/check-folder.ts';
import type { Trial } from '../trial/trial.ts';
import { checkDigests, type FileFinding } from './check-digests.ts';
import { differencesOf, type Difference } from './differences.ts';
import { CUT, publishedTrial } from './published-trial.ts';
import { tablesOf } from './tables-of.ts';

/** What re-checking a published trial found. */
export interface Recheck {
  readonly trial: string;
  /** Numbers of analysis.json that were compared. */
  readonly figures: number;
  readonly files: readonly FileFinding[];
  readonly differences: readonly Difference[];
  /** The analysis as it was published, and as it was worked out again; null where that was not possible. */
  readonly published: Analysis | null;
  readonly recomputed: Analysis | null;
}

const FORMAT = 1;

/**
 * Works a published trial out again from its raw files and compares: digests, every number and word of
 * analysis.json, and the tables made from the raw files. Needs nothing but the files of its data folder.
 *
 * @param again  the analysis of the trial that the raw files give
 * @param unread keys of the analysis that are not compared, wherever they stand
 * @returns a sentence where they are not those of a published trial, or of a newer format
 */
export function recompute(
  files: ReadonlyMap<string, Uint8Array>,
  again: (trial: Trial, published: Analysis) => Analysis,
  unread: readonly string[] = [],
): Recheck | string {
  const published = readAnalysis(files.get('analysis.json'));
  if (published === null)
    return (
      lostAnalysis(files) ?? 'These are not the files of a published trial: there is no analysis.json that can be read.'
    );
  if (typeof published === 'string') return published;

  const inputs = published.inputs.filter(({ file }) => !CUT.includes(file));
  const findings = [...checkDigests(files, inputs, DATA_FILES)];
  const { trial, problems } = publishedTrial(files, published);
  const found = { trial: published.trial, files: findings, published };
  if (!trial) {
    const first = problems.find(({ level }) => level === 'error');
    const why = first ? `${first.message}${first.line === null ? '' : ` (line ${first.line})`}` : 'it is not complete';
    const file = (first?.file ?? '').replace(/^\//, '');
    findings.push({ file, kind: 'unreadable', message: `cannot be worked out again: ${why}` });
    return { ...found, figures: 0, differences: [], recomputed: null };
  }

  const recomputed: Analysis = JSON.parse(JSON.stringify(again(trial, published)));
  const isSameVersion = published.software?.version === recomputed.software.version;
  const skip = new Set(['inputs', 'software', ...unread, ...(isSameVersion ? [] : ['text'])]);
  const { differences, figures } = differencesOf(published, recomputed, skip);
  for (const { name, text } of tablesOf(trial)) {
    const bytes = files.get(name);
    if (bytes && new TextDecoder('utf-8', { ignoreBOM: true }).decode(bytes) !== text) {
      findings.push({ file: name, kind: 'not-made', message: 'is not what the raw files give' });
    }
  }
  return { ...found, figures: figures.length, differences, recomputed };
}

/** Where SHA256SUMS says that there was an analysis: a published trial in which it was altered, or is missing. */
function lostAnalysis(files: ReadonlyMap<string, Uint8Array>): Recheck | null {
  const found = checkDigests(files, [], []);
  const isLost = files.has('SHA256SUMS') && found.some(({ file }) => file === 'analysis.json');
  if (!isLost) return null;
  return { trial: 'analysis.json', figures: 0, files: found, differences: [], published: null, recomputed: null };
}

/** The published analysis; null where it is none; a sentence where it is of a newer format. */
function readAnalysis(bytes: Uint8Array | undefined): Analysis | string | null {
  let analysis: unknown;
  try {
    analysis = JSON.parse(new TextDecoder().decode(bytes));
  } catch {
    return null;
  }
  const { format, trial, inputs } = (analysis ?? {}) as Partial<Analysis>;
  const number = Number(/^fairsown-analysis\/(\d+)$/.exec(String(format))?.[1] ?? NaN);
  if (number > FORMAT) return `It was made by a newer version (format ${number}); this one knows format ${FORMAT}.`;
  const isAnalysis = number === FORMAT && typeof trial === 'string' && Array.isArray(inputs) && inputs.every(isInput);
  return isAnalysis ? (analysis as Analysis) : null;
}

const isInput = (input: unknown): boolean =>
  typeof input === 'object' && input !== null && 'file' in input && typeof input.file === 'string' && 'sha256' in input;
