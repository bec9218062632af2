import { runCommand } from './run-command.ts';
import { keepCompiled } from './keep-compiled.ts';

keepCompiled();
const { runAnalyse } = await import('./run-analyse.ts');

await runCommand(runAnalyse);
