import { runCommand } from './run-command.ts';
import { runRecheck } from './run-recheck.ts';

await runCommand(runRecheck);
