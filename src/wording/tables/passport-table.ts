import type { Lot } from '../../trial/trial.ts';
import type { UiKey, Words } from '../words.ts';
import type { TextTable } from './numbers-table.ts';

/**
 * What is known about a seed lot: name, value, and the descriptor of the open passport standard that it answers.
 * Source of the descriptors: FAO/Bioversity Multi-Crop Passport Descriptors, version 2.1 (2015), from memory. What that
 * standard codes or defines otherwise (date of harvest, storage in words, moisture) has no descriptor here.
 */
export function passportTable(words: Words, lot: Lot): TextTable {
  const [genus = '', epithet = '', ...below] = lot.species.trim().split(/\s+/);
  const rows: (readonly [UiKey, string | null, string])[] = [
    ['lot.id', lot.id, ''],
    ['lot.crop', words.crop(lot.crop), 'CROPNAME'],
    ['lot.genus', genus, 'GENUS'],
    ['lot.epithet', epithet, 'SPECIES'],
    ['lot.below', below.join(' '), 'SUBTAXA'],
    ['lot.cultivar', lot.cultivar, 'ACCENAME'],
    ['lot.accession', lot.accession, 'ACCENUMB'],
    ['lot.supplier', lot.supplier, 'DONORNAME'],
    ['lot.origin', lot.origin, 'ORIGCTY'],
    ['lot.harvested', lot.harvested === null ? null : harvestText(words, lot.harvested), ''],
    ['lot.moisture', lot.moisture === null ? null : words.quantity(lot.moisture, '% wet basis'), ''],
    ['lot.seedsPerGram', lot.seedsPerGram === null ? null : words.number(lot.seedsPerGram), ''],
    ['lot.storage', lot.storage, ''],
    ['lot.note', lot.note, 'REMARKS'],
  ];
  return {
    head: [words.ui['lot.what'], words.ui['table.value'], words.ui['lot.descriptor']],
    rows: rows.flatMap(([name, value, descriptor]) => (value ? [[words.ui[name], value, descriptor]] : [])),
  };
}

const harvestText = (words: Words, harvested: string): string =>
  harvested.length === 10 ? words.date(harvested) : harvested;
