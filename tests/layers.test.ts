import { globSync, readFileSync } from 'node:fs';
import { posix } from 'node:path';
import { expect, test } from 'vitest';

/** What each folder of `src` may import besides itself: data flows one way. */
const MAY_IMPORT: Record<string, readonly string[]> = {
  statistics: [],
  trial: ['statistics'],
  analysis: ['trial', 'statistics'],
  wording: ['analysis', 'trial', 'statistics'],
  charts: ['wording', 'analysis', 'trial', 'statistics'],
  print: ['charts', 'wording', 'analysis', 'trial', 'statistics'],
  archive: ['charts', 'wording', 'analysis', 'trial', 'statistics'],
  files: ['print', 'archive', 'charts', 'wording', 'analysis', 'trial', 'statistics'],
  report: ['files', 'charts', 'wording', 'analysis', 'trial', 'statistics'],
  layouts: ['report', 'files', 'charts', 'wording', 'analysis', 'trial', 'statistics', 'styles'],
  pages: ['layouts', 'report', 'files', 'print', 'archive', 'charts', 'wording', 'analysis', 'trial', 'statistics'],
  commands: ['files', 'print', 'archive', 'charts', 'wording', 'analysis', 'trial', 'statistics'],
};

/** Folders that run unchanged in a browser: nothing of Node, no clock, no chance. */
const EVERYWHERE = ['statistics', 'trial', 'analysis', 'wording'];

const folderOf = (path: string) => path.split('/')[1] ?? '';

test.each(globSync('src/*/**/*.{ts,astro}').map((path) => path.replaceAll('\\', '/')))(
  '%s imports only what its folder may',
  (file) => {
    const text = readFileSync(file, 'utf8');
    for (const [, target = ''] of text.matchAll(/(?:from|import) '(\.{1,2}\/[^']+)'/g)) {
      const imported = folderOf(posix.join(posix.dirname(file), target));
      expect([folderOf(file), ...(MAY_IMPORT[folderOf(file)] ?? [])], `${file} → ${target}`).toContain(imported);
    }
    if (EVERYWHERE.includes(folderOf(file))) {
      expect(text, `${file} must run in a browser as well`).not.toMatch(
        /from 'node:|Math\.random|Date\.now|new Date\(\)/,
      );
    }
  },
);
