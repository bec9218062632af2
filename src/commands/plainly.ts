import { shownPath } from '../files/shown-path.ts';
import { systemReason } from '../files/system-reason.ts';
import { Unwritten } from '../files/unwritten.ts';
import type { Terminal } from './terminal.ts';

/**
 * Runs a command and says in a sentence what the disk refuses; a mistake of ours is thrown on with its stack trace.
 *
 * @returns the exit code of the command, 1 where something could not be written or read
 */
export async function plainly(
  run: (args: readonly string[], terminal: Terminal) => Promise<number>,
  args: readonly string[],
  terminal: Terminal,
): Promise<number> {
  try {
    return await run(args, terminal);
  } catch (error) {
    const sentence = refusedBySystem(error as NodeJS.ErrnoException);
    if (sentence === null) throw error;
    terminal.err(`${sentence}\n`);
    return 1;
  }
}

function refusedBySystem(error: NodeJS.ErrnoException): string | null {
  if (error instanceof Unwritten) return error.message;
  const { code, syscall, path } = error;
  if (code === undefined || syscall === undefined || path === undefined) return null;
  return `${shownPath(path)} could not be read: ${systemReason(code)}.`;
}
