import { runAccept } from './run-accept.ts';

process.exitCode = await runAccept(process.argv.slice(2), {
  out: (text) => process.stdout.write(text),
  err: (text) => process.stderr.write(text),
  terminal: process.stderr.isTTY,
});
