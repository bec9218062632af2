import * as z from 'zod';
import { contactField } from './field/contact-field.ts';
import { languageField } from './field/language-field.ts';
import { licenceField } from './field/licence-field.ts';
import { linkField } from './field/link-field.ts';
import { numberField } from './field/number-field.ts';
import { textField } from './field/text-field.ts';
import { yearField } from './field/year-field.ts';

/** site.yaml: the publisher. */
export const siteFile = z
  .strictObject({
    name: textField().describe('Name of the site or group'),
    base: linkField().describe('Address at which the site will stand, such as https://example.org'),
    language: languageField().describe('Language of the reports, BCP 47: en, en-GB or de'),
    licence: licenceField().describe('Licence of the data and texts, SPDX: CC-BY-4.0'),
    contact: contactField().optional().describe('Mail address or page for questions'),
    units: z.enum(['metric', 'us']).optional().describe('Units in which readings are shown; metric where not given'),
    on_problem: z
      .enum(['stop', 'leave-out'])
      .optional()
      .describe('What a mistake in one trial does to the build: stop it (as where not given) or leave that trial out'),
    notices: z.array(textField()).optional().describe('Further notices of your own, shown on every report'),
    paper: z.enum(['a4', 'letter']).optional().describe('Paper of summaries and sheets; a4 where not given'),
    regenerate_below: numberField({ what: 'a share of the first germination in %', example: '85', min: 0, max: 100 })
      .optional()
      .describe('Stored seed is grown anew when germination falls below this % of what it was at first'),
    group_since: yearField().optional().describe('Year in which the group began'),
  })
  .describe('The publisher of the site');
