import { normalCdf } from '../../src/statistics/distributions/normal.ts';
import { analyse } from '../../src/analysis/analyse.ts';
import type { Analysis, Result } from '../../src/analysis/analysis.ts';
import type { Trial } from '../../src/trial/trial.ts';
import { makeTreatment } from '../support/make-trial.ts';
import { storageTrial } from '../support/storage-trial.ts';

/**
 * An invented storage series with its analysis, two jars of 50 seeds a test.
 *
 * @param slopes probits a year by label; the first is the control
 * @param times  years
 */
export function inventSeries(
  slopes: Readonly<Record<string, number>>,
  times: readonly number[],
): { trial: Trial; analysis: Analysis; result: Result } {
  const entries = Object.entries(slopes);
  const counts = Object.fromEntries(
    entries.map(([, slope], index) => {
      const share = (time: number) => normalCdf(1.4 + slope * time);
      const jars = (time: number) => [0, 1].map((jar) => [Math.round(50 * share(time)) - (jar === index % 2 ? 1 : 0), 50] as const); // prettier-ignore
      return [`t${index}`, Object.fromEntries(times.map((time) => [time, jars(time).map(([count, seeds]) => [Math.max(0, count), seeds] as const)]))]; // prettier-ignore
    }),
  );
  const treatments = entries.map(([label], index) => makeTreatment(`t${index}`, { label, control: index === 0 }));
  const trial = storageTrial(counts, { treatments });
  const analysis = analyse(trial);
  const result = analysis.results.find(({ measure }) => measure === 'storage');
  if (result === undefined) throw new Error('no storage result');
  return { trial, analysis, result };
}
