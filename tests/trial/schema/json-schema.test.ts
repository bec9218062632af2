import { globSync, readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { Ajv, type ValidateFunction } from 'ajv';
import addFormats from 'ajv-formats';
import { expect, test } from 'vitest';
import { parse } from 'yaml';
import { YAML_FILES } from '../../../src/trial/schema/files.ts';
import { jsonSchema, type YamlFileName } from '../../../src/trial/schema/json-schema.ts';
import { schemaLine } from '../../../src/trial/schema/schema-line.ts';
import { publishedDemo } from '../../support/published-demo.ts';
import { unzipSync } from 'fflate';

/* Editors check YAML with the generated schemas: they must pass what the reader passes. ajv is a second reader of them. */

const root = join(import.meta.dirname, '..', '..', '..');
const ajv = new Ajv({ allErrors: true, allowUnionTypes: true });
addFormats.default(ajv);
const validators = new Map<string, ValidateFunction>(
  (Object.keys(YAML_FILES) as YamlFileName[]).map((file) => [
    basename(file),
    ajv.compile(jsonSchema(file, 'https://example.org/garden/schema')),
  ]),
);

function complaints(file: string, text: string): unknown {
  const validate = validators.get(basename(file));
  if (!validate) throw new Error(`no schema for ${file}`);
  validate(parse(text));
  return validate.errors;
}

const demonstration = globSync(['content/*.yaml', 'content/trials/**/*.yaml'], { cwd: root }).toSorted();

test.each(demonstration)('%s is what its JSON Schema asks for', (file) => {
  expect(complaints(file, readFileSync(join(root, file), 'utf8'))).toBeNull();
});

test('the demonstration has a file for each schema', () => {
  expect([...validators.keys()].filter((name) => !demonstration.some((file) => basename(file) === name))).toEqual([]);
});

const readme = readFileSync(join(root, 'README.md'), 'utf8');
const pasted = [...readme.matchAll(/^`content\/([^`]+\.yaml)` [^\n]+:\n\n```yaml\n([^]*?)^```$/gm)];

test.each(pasted.map(([, file = '', text = '']) => [file, text]))('%s of the README is as well', (file, text) => {
  expect(complaints(file, text)).toBeNull();
});

test('repeat kits name the schemas of the site that published them, and are what these ask for', async () => {
  for (const { files } of await publishedDemo()) {
    const kit = files.find(({ name }) => name.startsWith('repeat-'));
    for (const [name, bytes] of Object.entries(kit ? unzipSync(kit.bytes) : {})) {
      if (!name.endsWith('.yaml')) continue;
      const text = new TextDecoder().decode(bytes);
      expect(text.startsWith(schemaLine('https://wennoby.example', basename(name) as YamlFileName)), name).toBe(true);
      if (basename(name) !== 'people.yaml') expect(complaints(name, text)).toBeNull(); // its name is left to fill in
    }
  }
});

test.each([
  ['titel: x', 'additionalProperties'],
  ['sown: 4 April', 'format'],
  ['status: done', 'enum'],
  ['lots: leek', 'type'],
])('a slip is marked: %s', (line, keyword) => {
  const found = complaints('trial.yaml', `title: x\nquestion: x\n${line}\n`) as { keyword: string }[];
  expect(found.map((error) => error.keyword)).toContain(keyword);
});

test('its address is the one at which it is published', () => {
  const { $id, $schema, title } = jsonSchema('photos/captions.yaml', 'https://example.org/garden/schema');
  expect({ $id, $schema, title }).toEqual({
    $id: 'https://example.org/garden/schema/captions.json',
    $schema: 'http://json-schema.org/draft-07/schema#',
    title: 'photos/captions.yaml',
  });
  expect(schemaLine('https://example.org/garden/', 'photos/captions.yaml')).toBe(
    '# yaml-language-server: $schema=https://example.org/garden/schema/captions.json\n',
  );
});
