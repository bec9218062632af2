import * as z from 'zod';
import { expect, test } from 'vitest';
import { TABLE_FILES, YAML_FILES } from '../../../src/trial/schema/files.ts';

test.each(Object.entries({ ...YAML_FILES, ...TABLE_FILES }))(
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
  const { properties, required, additionalProperties } = z.toJSONSchema(YAML_FILES['trial.yaml'], { io: 'input' });
  expect(required).toEqual(['title', 'question', 'status', 'authors', 'lots', 'treatments']);
  expect(additionalProperties).toBe(false);
  expect(properties?.sown).toMatchObject({ type: 'string', format: 'date' });
  expect(properties?.seedlings_eaten).toMatchObject({ type: ['boolean', 'string'], enum: ['yes', 'no', true, false] });
  expect(properties?.outcomes).toMatchObject({
    items: { properties: { matters: { type: 'number' }, day: { anyOf: [{ type: 'number' }, { type: 'object' }] } } },
  });
});
