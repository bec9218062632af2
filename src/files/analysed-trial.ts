import { basename } from 'node:path';
import { isMainThread } from 'node:worker_threads';
import type { Analysis } from '../analysis/analysis.ts';
import { firstCountDate } from '../analysis/first-count-date.ts';
import type { Trial } from '../trial/trial.ts';
import { isBuilding } from './kept/build-keeper.ts';
import { setDigest } from './kept/digest-of.ts';
import { readKept } from './kept/read-kept.ts';

/** A trial as it may be told, with its analysis. */
export interface AnalysedTrial {
  readonly trial: Trial;
  readonly analysis: Analysis;
}

/** Trials that are held: all, but in threads of pages, which make those of a trial at about the same time. */
const HELD = isMainThread ? Infinity : 4;
/** Of so many a build holds the readings, too: those of ten thousand would take half a gigabyte. */
const WHOLE = 500;
const latest = new Map<string, { readonly file: string; readonly analysed: AnalysedTrial }>();

/**
 * Takes the readings out, two thirds of what a trial holds: lists hardly look at them but for the first date. Where somebody
 * does, they are read again.
 */
function lighten({ trial, analysis }: AnalysedTrial, file: string): void {
  firstCountDate(trial); // worked out once a trial
  const later = (of: object, name: string, read: () => unknown) =>
    Object.defineProperty(of, name, { get: read, enumerable: true });
  for (const name of ['counts', 'measurements'] as const) later(trial, name, () => lately(file).trial[name]);
  for (const [index, result] of analysis.results.entries())
    later(result, 'values', () => lately(file).analysis.results[index]?.values);
}

let last: { readonly file: string; readonly analysed: AnalysedTrial } | undefined;

/** Whoever looks once looks again. */
function lately(file: string): AnalysedTrial {
  if (last?.file !== file) last = { file, analysed: parsed(file) };
  return last.analysed;
}

function parsed(file: string): AnalysedTrial {
  const kept = readKept(file);
  if (!kept) throw new Error(`${file} was removed while the site was built; build again`);
  return JSON.parse(new TextDecoder().decode(kept));
}

/**
 * What the reading of the content kept of a trial: read once, and again where another reading kept something else.
 *
 * @param file as a `ContentReader` gives it
 * @throws {Error} where the file is gone
 */
export function analysedTrial(id: string, file: string): AnalysedTrial {
  const known = latest.get(id);
  if (known?.file === file) return known.analysed;
  const analysed = parsed(file);
  if (isMainThread && isBuilding() && latest.size >= WHOLE) lighten(analysed, file);
  setDigest(analysed.trial, `trial ${basename(file)}`); // the name is a digest of what both are made from
  setDigest(analysed.analysis, `analysis ${basename(file)}`);
  latest.delete(id);
  latest.set(id, { file, analysed });
  if (latest.size > HELD) latest.delete(latest.keys().next().value ?? '');
  return analysed;
}
