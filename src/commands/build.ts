import './give-back-memory.ts';
import { runBuild } from './run-build.ts';
import { runCommand } from './run-command.ts';

await runCommand(runBuild);
process.exit(); // pages that were begun are of no use once the build has stopped
