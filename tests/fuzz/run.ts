/**
 * Reads, analyses and tells many trials whose files were changed at random: `npm run fuzz [-- <trials> [<seed>]]`,
 * 20 000 where nothing is said. `npm test` runs 500 of them.
 */
import { spawnSync } from 'node:child_process';
import { join } from 'node:path';

const [runs = '20000', seed = '20261125'] = process.argv.slice(2);
const root = join(import.meta.dirname, '..', '..');
const { status } = spawnSync(
  process.execPath,
  [
    join(root, 'node_modules/vitest/vitest.mjs'),
    'run',
    '--config',
    'tests/vitest.config.ts',
    '--project',
    'unit',
    'tests/fuzz',
  ],
  { cwd: root, stdio: 'inherit', env: { ...process.env, FUZZ_RUNS: runs, FUZZ_SEED: seed } },
);
process.exit(status ?? 1);
