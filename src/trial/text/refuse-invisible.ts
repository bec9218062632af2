import { WHOLE_FILE, type FileProblems } from '../file-problems.ts';
import { invisibleSign } from './invisible-sign.ts';

/** Reports the first sign of a text that nobody can see and no text needs. */
export function refuseInvisible(text: string, report: FileProblems): void {
  const found = invisibleSign(text);
  if (found === null) return;
  const before = text.slice(0, found.at).split(/\r\n|\r|\n/);
  report.error({ ...WHOLE_FILE, line: before.length, column: (before.at(-1)?.length ?? 0) + 1 }, found.refusal);
}
