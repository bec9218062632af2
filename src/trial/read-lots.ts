import type { FileProblems } from './file-problems.ts';
import { lotsFile } from './schema/lots.ts';
import type { Lot } from './trial.ts';
import { checkYaml } from './yaml/check-yaml.ts';
import { readYaml, type YamlFile } from './yaml/read-yaml.ts';

/** lots.yaml, of the site or of one trial: seed lots by id. Null where there are errors; `most` bytes as `readYaml` takes them. */
export function readLots(
  bytes: Uint8Array,
  report: FileProblems,
  most?: number,
): { readonly lots: ReadonlyMap<string, Lot>; readonly yaml: YamlFile } | null {
  const yaml = readYaml(bytes, report, most);
  const checked = yaml && checkYaml(yaml, lotsFile, report);
  if (!yaml || !checked) return null;
  const lots = Object.entries(checked).map(([id, lot]): [string, Lot] => [
    id,
    {
      id,
      crop: lot.crop,
      species: lot.species,
      cultivar: lot.cultivar ?? null,
      supplier: lot.supplier ?? null,
      origin: lot.origin ?? null,
      seedsPerGram: lot.seeds_per_gram ?? null,
      harvested: lot.harvested ?? null,
      moisture: lot.moisture ?? null,
      accession: lot.accession ?? null,
      storage: lot.storage ?? null,
      note: lot.note ?? null,
    },
  ]);
  return { lots: new Map(lots), yaml };
}
