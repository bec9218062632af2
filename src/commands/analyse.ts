import { runCommand } from './run-command.ts';
import { runAnalyse } from './run-analyse.ts';

await runCommand(runAnalyse);
