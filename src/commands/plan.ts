import { randomBytes } from 'node:crypto';
import { confirm, input, select } from '@inquirer/prompts';
import { runCommand } from './run-command.ts';
import { runPlan } from './run-plan.ts';

const now = new Date();
const two = (value: number) => String(value).padStart(2, '0');
const world = {
  today: `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`,
  seed: randomBytes(12).toString('hex'),
  ask: process.stdin.isTTY && process.stdout.isTTY ? { input, select, confirm } : null,
};

await runCommand(async (args, terminal) => {
  try {
    return await runPlan(args, terminal, world);
  } catch (error) {
    if (error instanceof Error && error.name === 'ExitPromptError') return 1; // the person pressed Ctrl-C
    throw error;
  }
});
