import { runCommand } from './run-command.ts';
import { runSheets } from './run-sheets.ts';

await runCommand(runSheets);
