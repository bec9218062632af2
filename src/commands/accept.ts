import { runCommand } from './run-command.ts';
import { runAccept } from './run-accept.ts';

await runCommand(runAccept);
