import { countsCsv } from '../../archive/bench/counts-csv.ts';
import { eventsCsv } from '../../archive/bench/events-csv.ts';
import { measurementsCsv } from '../../archive/bench/measurements-csv.ts';
import { countDoubts } from '../../trial/bench/count-doubts.ts';
import type { BenchSession } from '../../trial/bench/bench.ts';
import { at, made } from './_elements.ts';
import { say } from './_page-words.ts';

const FILES = { 'counts.csv': countsCsv, 'measurements.csv': measurementsCsv, 'events.csv': eventsCsv };

/**
 * A button for every file that holds something, and the counts that the check of the files would refuse. Gives back
 * what shows them; the buttons themselves stay, so that none goes away under a thumb.
 */
export function savesShown(current: () => BenchSession): () => void {
  const nothing = made('li', say('nothing'));
  const entries = Object.entries(FILES).map(([file, text]) => {
    const button = made('button', say('saveAs', { file }), { type: 'button' });
    button.addEventListener('click', () => download(file, text(current()) ?? ''));
    const entry = made('li');
    entry.append(button);
    return { entry, text };
  });
  at('saves').replaceChildren(nothing, ...entries.map(({ entry }) => entry));
  return () => {
    for (const { entry, text } of entries) entry.hidden = text(current()) === null;
    nothing.hidden = entries.some(({ entry }) => !entry.hidden);
    const cells = doubtful(current());
    at('doubtful').textContent = cells.length > 0 ? say('doubtful', { sowings: cells.join(', ') }) : '';
  };
}

function doubtful({ trial, records }: BenchSession): string[] {
  return trial.sowings.flatMap((sowing) =>
    Object.values(records.checks)
      .filter(({ sowing: id, day }) => id === sowing.id && countDoubts(records, sowing, day).length > 0)
      .map(({ day }) => say('cell', { sowing: sowing.label ?? sowing.id, day })),
  );
}

function download(name: string, text: string): void {
  const address = URL.createObjectURL(new Blob([text], { type: 'text/csv' }));
  made('a', '', { href: address, download: name }).click();
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}
