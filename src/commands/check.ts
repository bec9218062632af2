import { runCheck } from './run-check.ts';

process.exitCode = await runCheck(process.argv.slice(2), {
  out: (text) => process.stdout.write(text),
  err: (text) => process.stderr.write(text),
  terminal: process.stderr.isTTY,
});
