import { randomBytes } from 'node:crypto';
import { confirm, input, select } from '@inquirer/prompts';
import { runPlan } from './run-plan.ts';

const now = new Date();
const two = (value: number) => String(value).padStart(2, '0');

try {
  process.exitCode = await runPlan(
    process.argv.slice(2),
    {
      out: (text) => process.stdout.write(text),
      err: (text) => process.stderr.write(text),
      terminal: process.stderr.isTTY,
    },
    {
      today: `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`,
      seed: randomBytes(12).toString('hex'),
      ask: process.stdin.isTTY && process.stdout.isTTY ? { input, select, confirm } : null,
    },
  );
} catch (error) {
  if (!(error instanceof Error && error.name === 'ExitPromptError')) throw error; // the person pressed Ctrl-C
  process.exitCode = 1;
}
