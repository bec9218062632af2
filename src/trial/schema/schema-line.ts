import { schemaName, type YamlFileName } from './json-schema.ts';
import { schemaFolder } from './schema-folder.ts';

/**
 * The first line of a file that is made for somebody to fill in: editors that know the YAML language server then
 * complete its keys and mark slips. A comment for everything else.
 *
 * @param base address of the site that publishes the schema
 */
export function schemaLine(base: string, file: YamlFileName): string {
  return `# yaml-language-server: $schema=${schemaFolder(base)}/${schemaName(file)}\n`;
}
