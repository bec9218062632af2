import * as z from 'zod';
import { shown } from '../text/shown.ts';
import { idField } from './field/id-field.ts';
import { linkField } from './field/link-field.ts';
import { refuse } from './field/refuse.ts';
import { textField } from './field/text-field.ts';

/** ORCID id; the last sign is a check digit (ISO 7064, MOD 11-2), so most slips are seen. */
const orcid = z
  .string()
  .trim()
  .transform((text) => text.replace(/^https:\/\/orcid\.org\//, ''))
  .superRefine((text, context) => {
    if (/^(\d{4}-){3}\d{3}[\dX]$/.test(text) && checkDigit(text) === text.at(-1)) return;
    refuse(context, {
      rule: 'bad-orcid',
      message: `expected an ORCID id such as 0000-0002-1825-0097; found ${shown(text)}`,
      remedy: 'Copy the 16 digits from your ORCID page; the last one checks the others.',
    });
  });

function checkDigit(text: string): string {
  const sum = Array.from(text.replaceAll('-', '').slice(0, -1)).reduce(
    (total, digit) => (total + Number(digit)) * 2,
    0,
  );
  const digit = (12 - (sum % 11)) % 11;
  return digit === 10 ? 'X' : String(digit);
}

const person = z.strictObject({
  name: textField().describe('Name as it is to be printed'),
  affiliation: textField().optional().describe('Garden, group or institution'),
  orcid: orcid.optional().describe('ORCID id'),
  url: linkField().optional().describe('Web page, http or https'),
});

/** people.yaml: person id -> who that is. */
export const peopleFile = z.record(idField(), person).describe('People: id -> name and where to find them');
