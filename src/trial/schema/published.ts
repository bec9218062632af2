import * as z from 'zod';
import { dateField } from './field/date-field.ts';
import { digestField } from './field/digest-field.ts';
import { idField } from './field/id-field.ts';
import { numberField } from './field/number-field.ts';

const published = z.strictObject({
  date: dateField().describe('Day on which this state was recorded'),
  digest: digestField().describe('SHA-256 of the list of input files with their digests'),
  version: numberField({ what: 'a version', example: '2', whole: true, min: 1 }).describe(
    '1 as first published, one more for every entry under changes',
  ),
});

/** published.yaml: trial id -> what of it was published. Written by `check --record` alone. */
export const publishedFile = z.record(idField(), published);
