import type { Trial } from '../trial/trial.ts';
import { publishedTrial } from './published-trial.ts';
import { recheck } from './recheck.ts';
import type { Recheck } from './recompute.ts';
import { unzipped } from './unzipped.ts';

/** A trial published on another site, worked out again from its raw files with the same result. */
export interface RepeatedTrial {
  readonly trial: Trial;
  /** Of its report, as its data package says; null where that says none. */
  readonly address: string | null;
}

/** What was found is told in full in up to so many places. */
const SHOWN = 3;

/**
 * A published trial from the zip of its data folder, once every digest holds and every figure is what its raw files give.
 *
 * @returns a sentence that says why, where it is refused
 */
export function repeatedTrial(zip: Uint8Array): RepeatedTrial | string {
  const files = unzipped(zip);
  if (typeof files === 'string') return files;
  const found = recheck(files);
  if (typeof found === 'string') return found;
  if (found.files.length > 0 || found.differences.length > 0) return refusal(found);
  const analysis = JSON.parse(new TextDecoder().decode(files.get('analysis.json')));
  const { trial } = publishedTrial(files, analysis);
  return trial ? { trial, address: addressOf(files.get('datapackage.json')) } : 'Its raw files cannot be read.';
}

function refusal({ files, figures, differences }: Recheck): string {
  const altered = files.map(({ file, message }) => `${file} ${message}`);
  const differing = differences.map(({ path }) => path);
  const shown = (all: readonly string[]) =>
    [...all.slice(0, SHOWN), ...(all.length > SHOWN ? [`${all.length - SHOWN} more`] : [])].join('; ');
  return altered.length > 0
    ? `It is not as it was published: ${shown(altered)}.`
    : `Of its ${figures} figures ${differing.length} ${differing.length === 1 ? 'differs' : 'differ'} from what its raw files give: ${shown(differing)}.`;
}

/** The home page that a data package names, where that is an address of the web. */
function addressOf(bytes: Uint8Array | undefined): string | null {
  try {
    const { homepage } = JSON.parse(new TextDecoder().decode(bytes));
    return typeof homepage === 'string' && /^https?:$/.test(new URL(homepage).protocol) ? homepage : null;
  } catch {
    return null;
  }
}
