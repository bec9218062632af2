import { spawnSync } from 'node:child_process';
import { appendFileSync, cpSync, existsSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { astroBuild } from '../support/build-site.ts';

const root = join(import.meta.dirname, '..', '..');
const trial = 'parsley-soaked-a-day';
let folder: string;
let content: string;

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'fairsown-broken-'));
  content = join(folder, 'content');
  cpSync(join(root, 'content'), content, { recursive: true });
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

test('a mistake in the data stops the build with the words of check, exit code 1 and no stack', () => {
  appendFileSync(join(content, 'trials', trial, 'counts.csv'), 'nobody,14,~20\n');
  appendFileSync(join(content, 'trials', trial, 'trial.yaml'), 'titel: Twice\n');
  const { status, output } = astroBuild(join(folder, 'dist'), content);
  const check = spawnSync(process.execPath, [join(root, 'src/commands/check.ts'), '--content', content], {
    cwd: root,
    encoding: 'utf8',
  });
  cpSync(join(root, 'content', 'trials', trial), join(content, 'trials', trial), { recursive: true });

  expect([status, check.status]).toEqual([1, 1]);
  const errors = check.stdout.split('\n').filter((_, index, all) => /^ +error: /.test(all[index + 1] ?? ''));
  expect(errors.length).toBeGreaterThanOrEqual(2);
  for (const error of errors) expect(output).toContain(error);
  expect(output).not.toMatch(/^\s+at /m);
  expect(existsSync(join(folder, 'dist', 'index.html'))).toBe(false);
});

test('code in a report stops the build with its place', () => {
  const report = join(content, 'trials', trial, 'report.mdx');
  writeFileSync(report, 'Fine so far.\n\nimport fs from "node:fs"\n\n<Result outcome={2 + 2} />\n');
  const { status, output } = astroBuild(join(folder, 'dist'), content);
  expect(status).toBe(1);
  expect(output).toContain(`trials/${trial}/report.mdx:3:1: found an import or export`);
  expect(output).toContain(`trials/${trial}/report.mdx:5:1: found the expression {"2 + 2"}`);
});

test('a component that names what the trial does not have, and a claim that it does not carry, stop the build with the words of check', () => {
  writeFileSync(
    join(content, 'trials', trial, 'report.mdx'),
    'It works.\n\n<Result outcome="germinaton" />\n\n<Claim is="same">They were alike.</Claim>\n',
  );
  const { status, output } = astroBuild(join(folder, 'dist'), content);
  const check = spawnSync(process.execPath, [join(root, 'src/commands/check.ts'), '--content', content], {
    cwd: root,
    encoding: 'utf8',
  });
  expect([status, check.status]).toEqual([1, 1]);
  expect(check.stdout).toMatch(/\d+ trials read: 2 errors, 1 warning\./);
  const errors = check.stdout.split('\n').filter((line, index, all) => /^ +error: /.test(all[index + 1] ?? line));
  expect(errors.length).toBe(2);
  for (const error of errors) expect(output).toContain(error);
  expect(output).toContain('Did you mean "germination"?');
  expect(output).toContain(
    'The data carry: <Claim outcome="germination" lot="parsley-2025" treatment="soaked" is="higher">',
  );
});
