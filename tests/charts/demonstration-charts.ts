import { join } from 'node:path';
import { analyse } from '../../src/analysis/analyse.ts';
import type { Chart } from '../../src/charts/chart.ts';
import { differences } from '../../src/charts/differences.ts';
import { germinationCurves } from '../../src/charts/germination-curves.ts';
import { masses } from '../../src/charts/masses.ts';
import { trait } from '../../src/charts/trait.ts';
import { units } from '../../src/charts/units.ts';
import { readContent } from '../../src/files/read-content.ts';
import type { Words } from '../../src/wording/words.ts';

/** Every chart of the demonstration trials under content/. */
export async function demonstrationCharts(words: Words): Promise<Record<string, Chart>> {
  const charts: Record<string, Chart> = {};
  const { trials } = await readContent(join(import.meta.dirname, '..', '..', 'content'));
  for (const { id, trial } of trials) {
    if (!trial) continue;
    const analysis = analyse(trial);
    for (const result of analysis.results) {
      for (const lot of new Set(result.groups.map((group) => group.lot))) {
        const draw =
          result.measure === 'trait'
            ? [trait]
            : result.measure === 'germination'
              ? [germinationCurves, units]
              : [units];
        for (const chart of draw) {
          const drawn = chart(trial, analysis, result, lot, words);
          charts[`${id}: ${result.outcome}, ${lot}, ${drawn.kind}`] = drawn;
        }
      }
      if (result.comparisons.length > 0)
        charts[`${id}: ${result.outcome}`] = differences(trial, analysis, result, words);
    }
    const weighed = masses(trial, analysis, words);
    if (weighed) charts[`${id}: masses`] = weighed;
  }
  return charts;
}
