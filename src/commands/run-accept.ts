import { parseArgs } from 'node:util';
import { acceptTrial } from '../files/accept-trial.ts';
import { contentFolder } from '../files/content-folder.ts';
import { checkReport } from './check-report.ts';
import type { Terminal } from './terminal.ts';

const USAGE = `npm run --silent accept -- <zip> [--content <folder>]

Takes a member's trial out of a zip, such as one in content/incoming/, into content/trials/, after the same checks as
check. Nothing is written where there are errors, and no trial is ever written over.

  --content <folder>  another content folder than FAIRSOWN_CONTENT or "content"

Ends with 0 where the trial was taken in, 1 where it has errors or its name is taken, 2 where the zip cannot be opened
safely or the command was called in a way it does not know.
`;

/**
 * The command `accept`.
 *
 * @returns the exit code: 0 taken in, 1 errors, 2 no safe zip, or usage
 */
export async function runAccept(args: readonly string[], terminal: Terminal): Promise<0 | 1 | 2> {
  const given = optionsOf(args);
  if (given === 'help') {
    terminal.out(USAGE);
    return 0;
  }
  if (given === null) {
    terminal.err(`Name one zip.\n\n${USAGE}`);
    return 2;
  }
  const accepted = await acceptTrial(given.zip, given.content ?? contentFolder());
  if (typeof accepted === 'string') {
    terminal.err(printable(`${given.zip}: ${accepted}\n`));
    return 2;
  }
  const { problems, ignored, folder } = accepted;
  const notes = [
    checkReport(problems, 1).text.trimEnd(),
    ...(ignored.length > 0 ? [`Not unpacked, as nothing reads it: ${ignored.join(', ')}`] : []),
    folder === null
      ? 'The trial was not taken in.'
      : `The trial stands in ${folder} now. The zip may go; look at the trial with npm run dev.`,
  ];
  terminal.out(printable(`${notes.join('\n\n')}\n`));
  return folder === null ? 1 : 0;
}

function optionsOf(
  args: readonly string[],
): { readonly zip: string; readonly content: string | undefined } | 'help' | null {
  try {
    const options = { help: { type: 'boolean', default: false }, content: { type: 'string' } } as const;
    const { values, positionals } = parseArgs({ args: [...args], allowPositionals: true, options });
    const [zip] = positionals;
    if (values.help) return 'help';
    return zip !== undefined && positionals.length === 1 ? { zip, content: values.content } : null;
  } catch {
    return null;
  }
}

/** Without letters that could steer a terminal. */
const printable = (text: string): string => text.replace(/[^\P{Cc}\n]|[\u202A-\u202E\u2066-\u2069]/gu, '\uFFFD');
