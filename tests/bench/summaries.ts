/**
 * How long a printable summary takes once warm, charts included, and how much memory 100 of them need.
 * `node tests/bench/summaries.ts`: the median over the demonstration's trials must stay under 60 ms, and 100 summaries under
 * 300 MB more than before the first. Judged by processor time, which other work on the machine lengthens less than the
 * clock; the clock is shown beside it.
 */
import { readPublishable } from '../../src/files/read-publishable.ts';
import { summaryPdf } from '../../src/print/summary/summary-pdf.ts';
import { publishedAnalysis } from '../../src/wording/published-analysis.ts';
import { wordsFor } from '../../src/wording/words-for.ts';

const LIMIT = { milliseconds: 60, megabytes: 300, summaries: 100 };

const { site, trials } = await readPublishable('content');
const words = wordsFor(site.language);
const abouts = trials.map((trial) => ({
  trial,
  analysis: publishedAnalysis(trial, words),
  site,
  words,
  address: `${site.base}/trials/${trial.id}/`,
}));
const megabytes = () => process.memoryUsage.rss() / 2 ** 20;
const before = megabytes();

// Every summary of the run differs from the one before and, by its address, from all others: nothing is set twice.
let most = before;
const taken = new Map<string, { readonly cpu: number; readonly clock: number }[]>();
for (let number = 0; number < LIMIT.summaries; number++) {
  const about = abouts[number % abouts.length];
  if (!about) throw new Error('There is no trial to print.');
  const [start, used] = [performance.now(), process.cpuUsage()];
  await summaryPdf({ ...about, address: `${about.address}?${number}` });
  const { user, system } = process.cpuUsage(used);
  most = Math.max(most, megabytes());
  if (number < abouts.length) continue; // warming up
  const times = taken.get(about.trial.id) ?? [];
  taken.set(about.trial.id, [...times, { cpu: (user + system) / 1000, clock: performance.now() - start }]);
}

const median = (values: readonly number[]) => values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)] ?? NaN;
for (const [id, times] of taken) {
  const [clock, cpu] = [median(times.map((time) => time.clock)), median(times.map((time) => time.cpu))];
  console.log(
    `${id.padEnd(32)} ${clock.toFixed(0).padStart(4)} ms, ${cpu.toFixed(0).padStart(4)} ms of processor time`,
  );
}
const all = [...taken.values()].flat();
const grown = most - before;
const time = median(all.map(({ cpu }) => cpu));
console.log(
  `median ${median(all.map(({ clock }) => clock)).toFixed(0)} ms, ${time.toFixed(0)} ms of processor time; ${LIMIT.summaries} summaries: ${grown.toFixed(0)} MB more`,
);
if (time > LIMIT.milliseconds || grown > LIMIT.megabytes) process.exitCode = 1;
