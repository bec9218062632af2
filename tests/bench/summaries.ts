/**
 * How long a printable summary takes once warm, charts included, and how much memory 100 of them need.
 * `node tests/bench/summaries.ts`: the median of every trial of the demonstration must be 60 ms or less, and 100 summaries
 * take 300 MB or less more than before the first; else it ends with 1. Judged by processor time, which other work on the
 * machine lengthens less than the clock; the clock is shown beside it.
 */
import { readPublishable } from '../../src/files/read-publishable.ts';
import { summaryPdf } from '../../src/print/summary/summary-pdf.ts';
import { publishedAnalysis } from '../../src/wording/published-analysis.ts';
import { wordsFor } from '../../src/wording/words-for.ts';

const LIMIT = { milliseconds: 60, megabytes: 300, summaries: 100 };
/** Rounds of all trials before times are taken, as so long Node still improves its code beside, and in all. */
const ROUNDS = { warming: 2, all: 11 };

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
for (let number = 0; number < ROUNDS.all * abouts.length; number++) {
  const about = abouts[number % abouts.length];
  if (!about) throw new Error('There is no trial to print.');
  const [start, used] = [performance.now(), process.cpuUsage()];
  await summaryPdf({ ...about, address: `${about.address}?${number}` });
  const { user, system } = process.cpuUsage(used);
  if (number < LIMIT.summaries) most = Math.max(most, megabytes());
  if (number < ROUNDS.warming * abouts.length) continue;
  const times = taken.get(about.trial.id) ?? [];
  taken.set(about.trial.id, [...times, { cpu: (user + system) / 1000, clock: performance.now() - start }]);
}

const median = (values: readonly number[]) => values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)] ?? NaN;
const judged = [...taken].map(([id, times]) => {
  const [clock, cpu] = [median(times.map((time) => time.clock)), median(times.map((time) => time.cpu))];
  const over = cpu > LIMIT.milliseconds ? `  more than ${LIMIT.milliseconds}` : '';
  console.log(
    `${id.padEnd(32)} ${clock.toFixed(0).padStart(4)} ms, ${cpu.toFixed(0).padStart(4)} ms of processor time${over}`,
  );
  return cpu;
});
const all = [...taken.values()].flat();
const grown = most - before;
console.log(
  `median of all ${median(all.map(({ clock }) => clock)).toFixed(0)} ms, ${median(all.map(({ cpu }) => cpu)).toFixed(0)} ms of processor time; ${LIMIT.summaries} summaries: ${grown.toFixed(0)} MB more`,
);
if (Math.max(...judged) > LIMIT.milliseconds || grown > LIMIT.megabytes) process.exitCode = 1;
