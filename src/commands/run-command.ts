import { systemReason } from '../files/system-reason.ts';
import { plainly } from './plainly.ts';
import type { Terminal } from './terminal.ts';

/** Runs a command in this process, with its arguments and its terminal, and ends it with the command's exit code. */
export async function runCommand(run: (args: readonly string[], terminal: Terminal) => Promise<number>): Promise<void> {
  const out = (text: string) => process.stdout.write(text);
  const err = (text: string) => process.stderr.write(text);
  process.stdout.on('error', ({ code = '' }: NodeJS.ErrnoException) => {
    // Somebody who has read enough, such as `head`, is told nothing.
    if (code !== 'EPIPE') err(`What the command says could not be written: ${systemReason(code)}.\n`);
    process.exit(1);
  });
  process.stderr.on('error', () => process.exit(1));
  process.exitCode = await plainly(run, process.argv.slice(2), { out, err, terminal: process.stderr.isTTY });
}
