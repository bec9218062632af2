/**
 * Marks of the built site in Lighthouse, on the machine's Chromium: the median of five runs of each page on a phone with a
 * slow connection (Lighthouse's own default). Ends with 1 where a mark is below 99.
 *
 * node tests/bench/lighthouse.ts [<page>…]
 */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { launch } from 'chrome-launcher';
import lighthouse from 'lighthouse';
import { chromiumPath } from '../support/browser.ts';
import { astroBuild, serve } from '../support/build-site.ts';

const RUNS = 5;
const LEAST = 99;
/**
 * Lighthouse fetches robots.txt from inside the page, which the pages' own policy forbids (`default-src 'none'`), and
 * then calls the file faulty. That it is there and right is tested in tests/site/base-path.test.ts.
 */
const SKIPPED = ['robots-txt'];
const MARKS = ['performance', 'accessibility', 'best-practices', 'seo'] as const;
const PAGES = [
  '',
  'trials/',
  'trials/parsley-soaked-a-day/',
  'trials/herbs-lit-or-covered/',
  'search/',
  'data-format/',
];

const folder = mkdtempSync(join(tmpdir(), 'fairsown-lighthouse-'));
const { status, output } = astroBuild(folder);
if (status !== 0) throw new Error(output);
const { port, close } = await serve(folder, '/');
const chromium = await launch({ chromePath: chromiumPath(), chromeFlags: ['--headless', '--no-sandbox', '--disable-gpu'] }); // prettier-ignore

let low = 0;
const given = process.argv.slice(2);
for (const page of given.length > 0 ? given : PAGES) {
  const runs: Record<(typeof MARKS)[number], number[]> = { performance: [], accessibility: [], 'best-practices': [], seo: [] }; // prettier-ignore
  const faults = new Set<string>();
  for (let run = 0; run < RUNS; run++) {
    const address = `http://localhost:${port}/${page}`;
    const result = await lighthouse(address, {
      port: chromium.port,
      output: 'json',
      logLevel: 'error',
      skipAudits: SKIPPED,
    });
    if (!result) throw new Error(`${address} gave no result`);
    const { categories, audits } = result.lhr;
    for (const mark of MARKS) {
      runs[mark].push(Math.round(100 * (categories[mark]?.score ?? 0)));
      for (const { id, weight } of categories[mark]?.auditRefs ?? []) {
        const score = audits[id]?.score;
        if (weight > 0 && score !== null && score !== undefined && score < 0.9) faults.add(id);
      }
    }
  }
  const medians = MARKS.map((mark) => [mark, runs[mark].sort((a, b) => a - b)[Math.floor(RUNS / 2)] ?? 0] as const);
  low += medians.filter(([, mark]) => mark < LEAST).length;
  const told = medians.map(([mark, value]) => `${mark} ${value}`).join(', ');
  console.log(`/${page}: ${told}${faults.size > 0 ? ` (${[...faults].join(', ')})` : ''}`);
}
chromium.kill();
await close();
rmSync(folder, { recursive: true });
process.exit(low === 0 ? 0 : 1);
