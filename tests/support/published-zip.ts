import { createHash } from 'node:crypto';
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { checksums } from '../../src/archive/checksums.ts';
import { zipOf } from '../../src/archive/zip-of.ts';
import { publishedFiles } from '../../src/files/published-files.ts';
import { DEFAULT_SITE } from '../../src/trial/read-site.ts';
import { readTrial } from '../../src/trial/read-trial.ts';
import type { Site } from '../../src/trial/trial.ts';
import { publishedAnalysis } from '../../src/wording/published-analysis.ts';

const encode = (text: string) => new TextEncoder().encode(text);

/** Raw files of a trial of leek in jars and packets on another site: `counts` as germinated by sowing. */
export function rawFiles(counts: Readonly<Record<string, number>>): Readonly<Record<string, string>> {
  const treatments = Object.keys(counts).map((sowing) => `${sowing},leek,${sowing.replace(/\d+$/, '')},50`);
  return {
    'trial.yaml': `title: Jars at the other site
question: Does leek seed kept in a jar come up better?
status: finished
authors: [noor]
sown: 2026-05-01
lots: [leek]
treatments:
  - { id: packet, label: Paper packet, control: true }
  - { id: jar, label: Sealed jar }
sowing: { container: a tray, assignment: random, treated: each-sowing }
`,
    'people.yaml': 'noor: { name: Noor Example }\n',
    'lots.yaml': 'leek: { crop: leek, species: Allium porrum }\n',
    'sowings.csv': ['sowing,lot,treatment,seeds', ...treatments, ''].join('\n'),
    'counts.csv': ['sowing,day,germinated', ...Object.entries(counts).map(([id, count]) => `${id},14,${count}`), ''].join('\n'), // prettier-ignore
  };
}

/** What another site publishes of a trial: the files of its data folder, by name, zip apart. */
export async function publishedElsewhere(
  raw: Readonly<Record<string, string>>,
  { id = 'other-jars', ...site }: Partial<Site> & { readonly id?: string } = {},
): Promise<Map<string, Uint8Array>> {
  const other: Site = { ...DEFAULT_SITE, base: 'https://other.example', ...site };
  const folder = await mkdtemp(join(tmpdir(), 'fairsown-'));
  const files = new Map(Object.entries(raw).map(([name, text]) => [name, encode(text)]));
  for (const [name, bytes] of files) await writeFile(join(folder, name), bytes);
  const { trial, problems } = readTrial({ id, folder: '', files, site: other });
  if (!trial) throw new Error(problems.map(({ message }) => message).join('\n'));
  const published = await publishedFiles(folder, trial, publishedAnalysis(trial, other.language), other);
  await rm(folder, { recursive: true });
  return new Map(published.filter(({ name }) => name !== `${id}.zip`).map(({ name, bytes }) => [name, bytes]));
}

/** The files as one zip, like the one that a site offers. */
export const zipped = (files: ReadonlyMap<string, Uint8Array>): Uint8Array =>
  zipOf('other-jars', [...files].map(([name, bytes]) => ({ name, bytes }))); // prettier-ignore

/** A file put in place of another, with every digest made anew, as someone would who wants it not to be seen. */
export function forgedWith(
  files: ReadonlyMap<string, Uint8Array>,
  name: string,
  text: string,
): Map<string, Uint8Array> {
  const digest = (bytes: Uint8Array) => createHash('sha256').update(bytes).digest('hex');
  const changed = new Map(files).set(name, encode(text));
  const analysis = JSON.parse(new TextDecoder().decode(changed.get('analysis.json')));
  for (const input of analysis.inputs) input.sha256 = digest(changed.get(input.file) ?? encode(''));
  changed.set('analysis.json', encode(`${JSON.stringify(analysis, null, 2)}\n`));
  changed.delete('SHA256SUMS');
  const named = [...changed].map(([file, bytes]) => ({ name: file, sha256: digest(bytes) }));
  return changed.set('SHA256SUMS', encode(checksums(named)));
}
