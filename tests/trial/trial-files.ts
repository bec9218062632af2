import { readSite } from '../../src/trial/read-site.ts';
import { readTrial } from '../../src/trial/read-trial.ts';

/** An invented site with one crop and one person. */
export const SITE_FILES = {
  'site.yaml': 'name: Test group\nbase: https://example.org\nlanguage: en\nlicence: CC-BY-4.0\n',
  'people.yaml': 'mara:\n  name: Mara Example\n',
  'lots.yaml': 'leek-2025:\n  crop: leek\n  species: Allium porrum\n  seeds_per_gram: 380\n',
};

/** An invented trial without a blemish: two treatments, two trays each, counted twice. */
export const TRIAL_FILES = {
  'trial.yaml': `title: Jar or packet
question: Does leek seed kept in a jar come up better?
status: finished
authors: [mara]
sown: 2026-04-04
lots: [leek-2025]
treatments:
  - id: packet
    label: Paper packet
    control: true
  - id: jar
    label: Sealed jar
`,
  'sowings.csv': `sowing,lot,treatment,seeds
s01,leek-2025,packet,50
s02,leek-2025,jar,50
s03,leek-2025,packet,50
s04,leek-2025,jar,50
`,
  'counts.csv': `sowing,day,germinated
s01,5,10
s02,5,12
s03,5,9
s04,5,14
s01,8,40
s02,8,45
s03,8,38
s04,8,44
`,
};

export type TextFiles = Readonly<Record<string, string | Uint8Array | null>>;

/** Files as bytes; null takes one out. */
export function filesOf(...layers: readonly TextFiles[]): Map<string, Uint8Array> {
  const entries = Object.entries(Object.assign({}, ...layers) as TextFiles);
  return new Map(
    entries.flatMap(([name, text]) => {
      if (text === null) return [];
      return [[name, typeof text === 'string' ? new TextEncoder().encode(text) : text]];
    }),
  );
}

/** Reads the trial above with some of its files replaced. */
export function readChanged(changed: TextFiles = {}, site: TextFiles = {}) {
  return readTrial({
    id: 'leek',
    folder: 'trials/leek',
    files: filesOf(TRIAL_FILES, changed),
    site: readSite(filesOf(SITE_FILES, site), '.').site,
  });
}
