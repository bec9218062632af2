import type { APIRoute, GetStaticPaths } from 'astro';
import { schemaFolder } from '../../trial/schema/schema-folder.ts';
import { YAML_FILES } from '../../trial/schema/files.ts';
import { jsonSchema, schemaName, type YamlFileName } from '../../trial/schema/json-schema.ts';
import { currentSite } from '../../report/current-site.ts';

export const getStaticPaths = (() =>
  (Object.keys(YAML_FILES) as YamlFileName[]).map((name) => ({
    params: { file: schemaName(name) },
    props: { name },
  }))) satisfies GetStaticPaths;

/** The JSON Schema of a file, for editors. */
export const GET: APIRoute<{ name: YamlFileName }> = async ({ props }) => {
  const { site } = await currentSite();
  const schema = jsonSchema(props.name, schemaFolder(site.base));
  return new Response(`${JSON.stringify(schema, null, 2)}\n`, { headers: { 'content-type': 'application/json' } });
};
