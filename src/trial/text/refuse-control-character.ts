import { WHOLE_FILE, type FileProblems } from '../file-problems.ts';

/** Reports the first control character of a text: an invisible sign that no keyboard types. */
export function refuseControlCharacter(text: string, report: FileProblems): void {
  const at = text.search(/[^\P{Cc}\t\n\r]/u);
  if (at < 0) return;
  const before = text.slice(0, at).split(/\r\n|\r|\n/);
  const code = text.charCodeAt(at).toString(16).toUpperCase().padStart(4, '0');
  report.error(
    { ...WHOLE_FILE, line: before.length, column: (before.at(-1)?.length ?? 0) + 1 },
    {
      rule: 'control-character',
      message: `an invisible control character (U+${code}) stands here`,
      remedy: 'Delete it, or save the file again as UTF-8: the letters may have been broken on the way.',
    },
  );
}
