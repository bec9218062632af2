import { runCommand } from './run-command.ts';
import { runCheck } from './run-check.ts';

await runCommand(runCheck);
