/**
 * How long after a CSV file was saved the open page shows it, while `astro dev` runs: invented trials,
 * `node tests/bench/dev.ts [trials] [times]`, 100 trials five times where nothing is said. A count is changed, and the time taken
 * until the report that is open in Chromium, which is loaded anew by itself, shows the new sum. The median should stay under a
 * second on a machine that does nothing else.
 */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { astroDev } from '../support/astro-dev.ts';
import { startBrowser } from '../support/browser.ts';
import { generateSite } from './generate-site.ts';

const LIMIT = 1000;
const [trials = 100, times = 5] = process.argv.slice(2).map(Number);
const content = mkdtempSync(join(tmpdir(), 'fairsown-bench-'));
generateSite(content, trials);
const [server, browser] = await Promise.all([astroDev(content), startBrowser()]);

try {
  const page = await browser.newPage();
  await page.goto(`${server.address}trials/trial-001/`);
  const spent: number[] = [];
  for (let run = 0; run < times; run++) {
    await page.waitForTimeout(2000); // until the last change has come to rest
    const { text, shown } = changedCounts((await page.textContent('body')) ?? '');
    const start = performance.now();
    writeFileSync(countsFile(), text);
    await page.waitForFunction((sum) => document.body?.textContent.includes(sum), shown, { polling: 10 });
    spent.push(performance.now() - start);
  }
  const median = spent.toSorted((a, b) => a - b)[Math.floor(times / 2)] ?? NaN;
  console.log(`a saved count shows after ${spent.map((one) => one.toFixed(0)).join(', ')} ms`);
  console.log(`median ${median.toFixed(0)} ms with ${trials} trials (limit ${LIMIT} ms)`);
  process.exitCode = median < LIMIT ? 0 : 1;
} finally {
  await browser.close();
  await server.stop();
  rmSync(content, { recursive: true, force: true });
}

function countsFile(): string {
  return join(content, 'trials', 'trial-001', 'counts.csv');
}

/** The file with another last count of its first sowing, one by which the sum of the group is none that the page shows. */
function changedCounts(page: string): { text: string; shown: string } {
  const [head = '', ...rows] = readFileSync(countsFile(), 'utf8').split('\n');
  const cells = rows.map((row) => row.split(','));
  const [first = []] = cells;
  const others = cells.slice(1, 4).reduce((sum, row) => sum + Number(row.at(-1)), 0);
  let last = Number(first.at(-2));
  while (page.includes(`${others + last} of 200`)) last++;
  first[first.length - 1] = String(last);
  return { text: [head, ...cells.map((row) => row.join(','))].join('\n'), shown: `${others + last} of 200` };
}
