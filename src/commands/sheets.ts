import { runSheets } from './run-sheets.ts';

process.exitCode = await runSheets(process.argv.slice(2), {
  out: (text) => process.stdout.write(text),
  err: (text) => process.stderr.write(text),
  terminal: process.stderr.isTTY,
});
