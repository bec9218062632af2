import { runRecheck } from './run-recheck.ts';

process.exitCode = await runRecheck(process.argv.slice(2), {
  out: (text) => process.stdout.write(text),
  err: (text) => process.stderr.write(text),
  terminal: process.stderr.isTTY,
});
