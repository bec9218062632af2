/**
 * The whole test command: format and lint, types, unit tests, then the clean build with its site and
 * browser tests. Stops at the first step that fails; the closing line counts every test that ran.
 */
import { spawnSync } from 'node:child_process';
import { mkdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';

const root = join(import.meta.dirname, '..', '..');
const output = join(root, 'tests', 'output');
rmSync(output, { recursive: true, force: true });
mkdirSync(output, { recursive: true });

const bin = (name: string) => join(root, 'node_modules', '.bin', process.platform === 'win32' ? `${name}.cmd` : name);
const vitest = (project: string) => [
  bin('vitest'),
  'run',
  '--config',
  'tests/vitest.config.ts',
  '--project',
  project,
  '--reporter=default',
  '--reporter=json',
  `--outputFile.json=${join(output, `${project}.json`)}`,
];
const steps: Record<string, string[]> = {
  lint: [bin('oxlint'), '--quiet'],
  format: [bin('prettier'), '--check', '--log-level=warn', '.'],
  types: [bin('astro'), 'check', '--minimumFailingSeverity', 'warning'],
  unit: vitest('unit'),
  site: vitest('site'),
};

let passed = 0;
let failed = 0;
for (const [name, [command = '', ...args]] of Object.entries(steps)) {
  console.log(`\n== ${name}`);
  const { status } = spawnSync(command, args, {
    cwd: root,
    stdio: 'inherit',
    env: { ...process.env, ASTRO_TELEMETRY_DISABLED: '1' },
  });
  const report = readReport(join(output, `${name}.json`));
  passed += report?.numPassedTests ?? (status === 0 ? 1 : 0);
  failed += report
    ? report.numFailedTests + (status !== 0 && report.numFailedTests === 0 ? 1 : 0)
    : status === 0
      ? 0
      : 1;
  if (status !== 0) break;
}
console.log(`\n${passed} passed, ${failed} failed`);
process.exit(failed === 0 ? 0 : 1);

function readReport(file: string): { numPassedTests: number; numFailedTests: number } | null {
  try {
    return JSON.parse(readFileSync(file, 'utf8'));
  } catch {
    return null;
  }
}
