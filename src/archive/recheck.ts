import type { Analysis } from '../analysis/analysis.ts';
import { DATA_FILES } from '../trial/check-folder.ts';
import type { Trial } from '../trial/trial.ts';
import { publishedAnalysis } from '../wording/published-analysis.ts';
import { checkDigests, type FileFinding } from './check-digests.ts';
import { differencesOf, type Difference } from './differences.ts';
import { CUT, publishedTrial } from './published-trial.ts';
import { tablesOf } from './tables-of.ts';
import { languages } from '../wording/words-for.ts';

/** What re-checking a published trial found. */
export interface Recheck {
  readonly trial: string;
  /** Numbers of analysis.json that were compared. */
  readonly figures: number;
  readonly files: readonly FileFinding[];
  readonly differences: readonly Difference[];
}

const FORMAT = 1;

/**
 * Works a published trial out again from its raw files and compares: digests, every number and word of
 * analysis.json, and the tables made from the raw files. Needs nothing but the files of its data folder.
 *
 * @returns a sentence where they are not those of a published trial, or of a newer format
 */
export function recheck(files: ReadonlyMap<string, Uint8Array>): Recheck | string {
  const analysis = readAnalysis(files.get('analysis.json'));
  if (analysis === null)
    return (
      lostAnalysis(files) ?? 'These are not the files of a published trial: there is no analysis.json that can be read.'
    );
  if (typeof analysis === 'string') return analysis;

  const inputs = analysis.inputs.filter(({ file }) => !CUT.includes(file));
  const findings = [...checkDigests(files, inputs, DATA_FILES)];
  const { trial, problems } = publishedTrial(files, analysis);
  if (!trial) {
    const first = problems.find(({ level }) => level === 'error');
    const why = first ? `${first.message}${first.line === null ? '' : ` (line ${first.line})`}` : 'it is not complete';
    findings.push({ file: (first?.file ?? '').replace(/^\//, ''), message: `cannot be worked out again: ${why}` });
    return { trial: analysis.trial, figures: 0, files: findings, differences: [] };
  }

  const again = inItsLanguage(trial, analysis);
  const isSameVersion = analysis.software?.version === again.software.version;
  const skip = new Set(['inputs', 'software', ...(isSameVersion ? [] : ['text'])]);
  const { differences, figures } = differencesOf(analysis, JSON.parse(JSON.stringify(again)), skip);
  for (const { name, text } of tablesOf(trial)) {
    const published = files.get(name);
    if (published && new TextDecoder('utf-8', { ignoreBOM: true }).decode(published) !== text) {
      findings.push({ file: name, message: 'is not what the raw files give' });
    }
  }
  return { trial: analysis.trial, figures, files: findings, differences };
}

/** Worked out again in the language in which it was published; in English where no language gives its words. */
function inItsLanguage(trial: Trial, published: Analysis): Analysis {
  const texts = ({ caveats }: Analysis) =>
    Array.isArray(caveats) && JSON.stringify(caveats.map((caveat: { text: string } | null) => caveat?.text));
  const [english = publishedAnalysis(trial, 'en'), ...others] = languages.map((tag) => publishedAnalysis(trial, tag));
  return [english, ...others].find((analysis) => texts(analysis) === texts(published)) ?? english;
}

/** Where SHA256SUMS says that there was an analysis: a published trial in which it was altered, or is missing. */
function lostAnalysis(files: ReadonlyMap<string, Uint8Array>): Recheck | null {
  const found = checkDigests(files, [], []);
  const isLost = files.has('SHA256SUMS') && found.some(({ file }) => file === 'analysis.json');
  return isLost ? { trial: 'analysis.json', figures: 0, files: found, differences: [] } : null;
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
