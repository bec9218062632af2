import { addYears } from '../../trial/text/add-years.ts';
import type { Block } from '../document.ts';
import { sheetDocument } from './sheet-document.ts';
import type { Sheet, SheetTrial } from './sheet.ts';

/**
 * Labels for the packets or jars of a storage series: one a lot, treatment and test, with the date on which to open
 * it; null where the trial is no storage series or names no tests.
 */
export function packetLabels(about: SheetTrial): Sheet | null {
  const { trial, words } = about;
  const { ui } = words;
  const { storage } = trial;
  if (storage === null || storage.tests.length === 0) return null;
  const labels = trial.lots.flatMap((lot) =>
    trial.treatments.flatMap((treatment) =>
      storage.tests
        .filter((years) => years > 0) // the start is tested before anything is packed
        .map((years): Block[] => [
          { kind: 'text', style: 'strong', text: words.lotName(trial, lot.id) },
          { kind: 'text', style: 'label', text: words.treatmentLabel(trial, treatment.id) },
          {
            kind: 'text',
            style: 'strong',
            text: storage.started
              ? words.say('sheet.openOn', { date: words.date(addYears(storage.started, years)) })
              : words.say('sheet.stored', { time: words.quantity(years, 'years') }),
          },
          {
            kind: 'text',
            style: 'label',
            text: `${ui['sheet.packedOn']}: ${storage.started ? words.date(storage.started) : '____________'}`,
          },
          { kind: 'text', style: 'soft', text: trial.id },
        ]),
    ),
  );
  return {
    file: 'packet-labels.pdf',
    document: sheetDocument(about, ui['sheet.packets'], [{ kind: 'labels', columns: 3, height: 42, labels }]),
  };
}
