import { cpSync, existsSync, globSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { astroBuild } from '../support/build-site.ts';
import { englishIn } from '../support/english-in.ts';
import { readPdf } from '../support/read-pdf.ts';

const demonstration = join(import.meta.dirname, '..', '..', 'content');
const german = join(import.meta.dirname, 'german');
const TRIALS = ['petersilie-eingeweicht', 'zwiebel-getrocknet', 'kraeuter-im-licht'];
const FROM: Readonly<Record<string, string>> = {
  'petersilie-eingeweicht': 'parsley-soaked-a-day',
  'zwiebel-getrocknet': 'onion-dried-before-freezing',
  'kraeuter-im-licht': 'herbs-lit-or-covered',
};
/** What growers wrote into cells. */
const CELLS: Readonly<Record<string, string>> = {
  'left half of the sill': 'linke Hälfte',
  'right half of the sill': 'rechte Hälfte',
  jar: 'Glas',
  dish: 'Schale',
};
const TABLES = ['sowings', 'key', 'counts', 'measurements', 'weighings'];
const REPORT = `Wir waren neugierig.

<InShort/>

<Result outcome="germination"/>

<Chart kind="units" outcome="germination"/>

<Table outcome="height"/>

<Caveats/>
`;
/** What may be written into a file is the same in every language. */
const WORDS_OF_THE_FORMAT = /^(?:eins|eine Liste von einigen) von: /;
const LICENCE = /CC-BY-4\.0/g;
let folder: string;
let built: ReturnType<typeof astroBuild>;
const dist = () => join(folder, 'dist');

/** The counts of demonstration trials under texts of a group that writes German. */
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'fairsown-german-'));
  const content = join(folder, 'content');
  for (const file of ['site.yaml', 'people.yaml', 'lots.yaml']) cpSync(join(german, file), join(content, file));
  for (const trial of TRIALS) {
    const to = join(content, 'trials', trial);
    mkdirSync(to, { recursive: true });
    cpSync(join(german, `${trial}.yaml`), join(to, 'trial.yaml'));
    for (const table of TABLES)
      copyTable(join(demonstration, 'trials', FROM[trial] ?? '', `${table}.csv`), join(to, `${table}.csv`));
  }
  writeFileSync(join(content, 'trials', TRIALS[0] ?? '', 'report.mdx'), REPORT);
  built = astroBuild(dist(), content);
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

test('a site in German is built', () => {
  expect(built.output).not.toMatch(/\[(ERROR|WARN)\]/);
  expect(built.status).toBe(0);
  expect(globSync('trials/*/index.html', { cwd: dist() })).toHaveLength(TRIALS.length);
});

test('no page of a German site holds an English word of ours', () => {
  const pages = globSync('**/*.html', { cwd: dist() });
  expect(pages.length).toBeGreaterThan(TRIALS.length + 3);
  for (const page of pages) {
    const html = readFileSync(join(dist(), page), 'utf8');
    expect(html, page).toContain('<html lang="de"');
    const found = textsOf(html).flatMap((text) => englishIn(text).map((word) => `${word} in “${text}”`));
    expect([...new Set(found)], page).toEqual([]);
  }
});

test('numbers and dates are written the German way', () => {
  const html = readFileSync(join(dist(), 'trials', TRIALS[0] ?? '', 'index.html'), 'utf8');
  const words = textsOf(html).join(' ').replaceAll('\u00A0', ' ');
  const has = (pattern: RegExp) => pattern.test(words);
  expect(has(/Gesät 14\. März 2026/)).toBe(true);
  expect(has(/2,9 Tage früher/)).toBe(true);
  expect(has(/hälfte aufgegangen war \(Tage\)/i)).toBe(true); // on the axis, too
  expect(has(/\d\.\d+ (?:Tage|mm|%|Prozentpunkte)/)).toBe(false);
});

test.each(TRIALS)('the printable summary of %s holds no English word of ours', async (trial) => {
  const { text } = await readPdf(readFileSync(join(dist(), 'trials', trial, 'summary.pdf')));
  expect([...new Set(englishIn(text.replaceAll(LICENCE, ' ')))]).toEqual([]);
});

/** What a reader sees or hears of a page: running text and names for the eyes that cannot see; sources keep their language. */
function textsOf(html: string): string[] {
  const shown = html
    .replaceAll(/<meta http-equiv[^>]*>/g, ' ')
    .replaceAll(/<(script|style|code|pre)\b[^]*?<\/\1>/g, ' ')
    .replaceAll(/<ul class="sources[^]*?<\/ul>/g, ' ')
    .replaceAll(/<(\w+)[^>]* lang="en"[^>]*>[^]*?<\/\1>/g, ' '); // said to be English
  const attributes = [...shown.matchAll(/ (?:alt|title|aria-label|aria-description|content)="([^"]*)"/g)].map(
    ([, text = '']) => text,
  );
  return [...shown.replaceAll(/<[^>]+>/g, '\n').split('\n'), ...attributes]
    .map((text) => text.replaceAll(LICENCE, ' ').trim())
    .filter((text) => text !== '' && !WORDS_OF_THE_FORMAT.test(text));
}

function copyTable(from: string, to: string): void {
  if (!existsSync(from)) return; // this trial has no such table
  const cells = new RegExp(Object.keys(CELLS).join('|'), 'g');
  writeFileSync(
    to,
    readFileSync(from, 'utf8').replaceAll(cells, (cell) => CELLS[cell] ?? cell),
  );
}
