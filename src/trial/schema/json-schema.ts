import * as z from 'zod';
import { YAML_FILES } from './files.ts';

export type YamlFileName = keyof typeof YAML_FILES;

/** File name of a YAML file's JSON Schema: `trial.json` for trial.yaml, `captions.json` for photos/captions.yaml. */
export function schemaName(file: YamlFileName): string {
  return file.replace(/^.*\//, '').replace(/\.yaml$/, '.json');
}

/**
 * The JSON Schema of a YAML file (draft 7, which every editor knows), generated from the schema that reads it: what an
 * author may write, so numbers are numbers. It knows shapes and words; what files must say together only `check` knows.
 *
 * @param folder address under which the schemas of the site stand, such as https://example.org/schema
 */
export function jsonSchema(file: YamlFileName, folder: string): Readonly<Record<string, unknown>> {
  const schema = z.toJSONSchema(YAML_FILES[file], { io: 'input', target: 'draft-7' });
  return { ...schema, $id: `${folder}/${schemaName(file)}`, title: file };
}
