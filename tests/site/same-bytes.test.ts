import { createHash } from 'node:crypto';
import {
  cpSync,
  existsSync,
  globSync,
  mkdtempSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { KEPT_IN } from '../../src/files/kept/build-keeper.ts';
import { astroBuild } from '../support/build-site.ts';

const root = join(import.meta.dirname, '..', '..');
/** One of each kind: with photos, with moisture, pooled, a storage series, growing, planned. */
const LEFT_OUT = ['carrots-under-vermiculite', 'parsley-soaked-a-day', 'lettuce-surface-or-covered'];
/** A clock that is 200 days on. */
const LATER = `data:text/javascript,${encodeURIComponent(
  'const T=Date;const S=200*864e5;globalThis.Date=class extends T{constructor(...a){if(a.length===0)super(T.now()+S);else super(...a)}static now(){return T.now()+S}};',
)}`;
let folder: string;

beforeAll(() => (folder = mkdtempSync(join(tmpdir(), 'fairsown-same-'))));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Digest of every file of a built site by its path. */
function digests(dist: string): Record<string, string> {
  const files = globSync('**/*', { cwd: dist }).filter((file) => statSync(join(dist, file)).isFile());
  return Object.fromEntries(
    files.toSorted().map((file) => [
      file,
      createHash('sha256')
        .update(readFileSync(join(dist, file)))
        .digest('hex'),
    ]),
  );
}

test('the same content gives the same bytes: cold or warm, elsewhere, later, in another zone and language', () => {
  const content = join(folder, 'content');
  cpSync(join(root, 'content'), content, {
    recursive: true,
    filter: (path) => !LEFT_OUT.some((trial) => path.endsWith(trial)),
  });
  rmSync(join(root, KEPT_IN), { recursive: true, force: true });
  const cold = astroBuild(join(folder, 'cold'), content);
  expect(cold.output).not.toMatch(/\[(ERROR|WARN)\]/);
  expect(cold.status).toBe(0);
  expect(globSync('*/*/*', { cwd: join(root, KEPT_IN) }).length).toBeGreaterThan(50);

  renameSync(content, join(folder, 'moved'));
  for (const file of globSync('**/*', { cwd: join(folder, 'moved') }))
    utimesSync(join(folder, 'moved', file), 1e9, 1e9);
  const warm = astroBuild(join(folder, 'elsewhere', 'warm'), join(folder, 'moved'), {
    TZ: 'Pacific/Auckland',
    LANG: 'tr_TR.UTF-8',
    LC_ALL: 'tr_TR.UTF-8',
    NODE_OPTIONS: `--import=${LATER}`,
  });
  expect(warm.status).toBe(0);
  expect(digests(join(folder, 'elsewhere', 'warm'))).toEqual(digests(join(folder, 'cold')));
});

test('whatever changes or goes in the content, nothing of before is served', () => {
  const content = join(folder, 'changed');
  renameSync(join(folder, 'moved'), content);
  change('people.yaml', 'Oda Quennelby', 'Oda Q. Quennelby');
  change('lots.yaml', 'saved by the circle', 'saved by all');
  change('questions.yaml', 'title: Peas soaked overnight', 'title: Peas, soaked or dry');
  change('trials/peas-soaked-porch/trial.yaml', 'in a cold porch', 'in a porch'); // stands on the pages of the others
  change('trials/peas-soaked-porch/counts.csv', 'box 1,6,8', 'box 1,6,7');
  change('trials/tomato-tin-or-envelope/report.mdx', 'What we found', 'What we have found');
  const [lit, covered] = ['lit', 'covered'].map((how) => join(content, 'trials/herbs-lit-or-covered/photos', `14-sage-${how}.png`)); // prettier-ignore
  cpSync(lit ?? '', covered ?? '');
  rmSync(join(content, 'trials', 'onion-dried-before-freezing'), { recursive: true });
  const over = join(folder, 'cold'); // the site of before
  expect(astroBuild(over, content).status).toBe(0);
  const before = join(root, KEPT_IN, 'report', 'before');
  writeFileSync(before, '');
  expect(astroBuild(join(folder, 'changed-cold'), content, {}, ['--force']).status).toBe(0);
  expect(existsSync(before)).toBe(false);
  expect(digests(over)).toEqual(digests(join(folder, 'changed-cold')));

  function change(file: string, from: string, to: string): void {
    const text = readFileSync(join(content, file), 'utf8');
    expect(text).toContain(from);
    writeFileSync(join(content, file), text.replaceAll(from, to));
  }
});
