import * as z from 'zod';
import { expect, test } from 'vitest';
import { captionsFile } from '../../src/trial/schema/captions.ts';
import { countsRow } from '../../src/trial/schema/counts.ts';
import { eventsRow } from '../../src/trial/schema/events.ts';
import { fatesRow } from '../../src/trial/schema/fates.ts';
import { keyRow } from '../../src/trial/schema/key.ts';
import { lotsFile } from '../../src/trial/schema/lots.ts';
import { measurementsRow } from '../../src/trial/schema/measurements.ts';
import { peopleFile } from '../../src/trial/schema/people.ts';
import { planFile } from '../../src/trial/schema/plan.ts';
import { questionsFile } from '../../src/trial/schema/questions.ts';
import { siteFile } from '../../src/trial/schema/site.ts';
import { sowingsRow } from '../../src/trial/schema/sowings.ts';
import { trialFile } from '../../src/trial/schema/trial.ts';
import { weighingsRow } from '../../src/trial/schema/weighings.ts';

const FILES = { trialFile, siteFile, peopleFile, lotsFile, questionsFile, planFile, captionsFile };
const ROWS = { sowingsRow, keyRow, countsRow, fatesRow, measurementsRow, weighingsRow, eventsRow };

test.each(Object.entries({ ...FILES, ...ROWS }))(
  '%s becomes a JSON Schema in which every key is described',
  (_name, schema) => {
    const undescribed: string[] = [];
    visit(z.toJSONSchema(schema, { io: 'input' }), '');
    expect(undescribed).toEqual([]);

    function visit(node: unknown, path: string): void {
      if (typeof node !== 'object' || node === null) return;
      const { properties, ...rest } = node as { properties?: Record<string, { description?: string }> };
      for (const [key, value] of Object.entries(properties ?? {})) {
        if (!value.description) undescribed.push(`${path}.${key}`);
        visit(value, `${path}.${key}`);
      }
      for (const value of Object.values(rest)) visit(value, path);
    }
  },
);

test('the JSON Schema of trial.yaml says numbers, dates and switches as an editor sees them', () => {
  const { properties, required, additionalProperties } = z.toJSONSchema(trialFile, { io: 'input' });
  expect(required).toEqual(['title', 'question', 'status', 'authors', 'lots', 'treatments']);
  expect(additionalProperties).toBe(false);
  expect(properties?.sown).toMatchObject({ type: 'string', format: 'date' });
  expect(properties?.seedlings_eaten).toMatchObject({ type: 'boolean' });
  expect(properties?.outcomes).toMatchObject({
    items: { properties: { matters: { type: 'number' }, day: { anyOf: [{ type: 'number' }, { type: 'object' }] } } },
  });
});
