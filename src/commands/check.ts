import { runCommand } from './run-command.ts';
import { keepCompiled } from './keep-compiled.ts';

keepCompiled();
const { runCheck } = await import('./run-check.ts');

await runCommand(runCheck);
