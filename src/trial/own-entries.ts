import { canonicalJson } from './canonical-json.ts';
import type { FileProblems } from './file-problems.ts';
import { shown } from './text/shown.ts';
import type { YamlFile } from './yaml/read-yaml.ts';

/**
 * The site's lots (or people) with those that a trial brings. An id that stands in both must say the same:
 * else no one could tell which seed was sown.
 */
export function ownEntries<Entry extends object>(
  site: Readonly<Record<string, Entry>>,
  own: { readonly entries: ReadonlyMap<string, Entry>; readonly yaml: YamlFile } | null,
  report: FileProblems,
): ReadonlyMap<string, Entry> {
  const all = new Map(Object.entries(site));
  for (const [id, entry] of own?.entries ?? []) {
    const known = all.get(id);
    if (known && own && canonicalJson(known) !== canonicalJson(entry)) {
      const keys = Object.keys(entry) as (keyof Entry)[];
      const different = keys
        .filter((key) => entry[key] !== known[key])
        .map((key) => String(key).replace(/[A-Z]/g, (letter) => `_${letter.toLowerCase()}`));
      report.error(own.yaml.place([id]), {
        rule: 'given-twice',
        message: `${shown(id)} stands in the site's file too, with another ${different.join(', ')}`,
        remedy: 'Take it out here, make both say the same, or use another id if it is something else.',
      });
    }
    all.set(id, entry);
  }
  return all;
}
