import { createHash } from 'node:crypto';
import { existsSync, globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, inject, test } from 'vitest';
import { canonicalJson } from '../../src/trial/canonical-json.ts';

const site = inject('site');
const content = join(import.meta.dirname, '..', '..', 'content');
const trials = site.pages.filter((page) => /^trials\/[^/]+\/$/.test(page));
const COMPARED =
  'in-short trust words results photos retest cannot-tell notices methods as-done data repeat cite history'.split(' ');
const GROWING = 'words as-done counts photos notices retest repeat data cite history'.split(' ');
const OPTIONAL = ['words', 'photos', 'notices', 'counts', 'retest'];
const read = (path: string) => readFileSync(join(site.folder, path));
const sha256 = (bytes: Uint8Array) => createHash('sha256').update(bytes).digest('hex');

test('every trial of the content folder has a report', () => {
  const folders = globSync('trials/*/trial.yaml', { cwd: content }).map((file) => file.split(/[\\/]/)[1]);
  expect(trials.map((page) => page.split('/')[1]).sort()).toEqual(folders.sort());
  expect(folders.length).toBeGreaterThan(0);
});

describe.each(trials)('/%s', (page) => {
  const id = page.split('/')[1] ?? '';
  const html = read(`${page}index.html`).toString();
  const analysis = JSON.parse(read(`${page}data/analysis.json`).toString());

  test('holds its sections in the order of the design', () => {
    const found = [...html.matchAll(/<section class="section" id="([^"]+)"/g)].map(([, section = '']) => section);
    const order = analysis.results.length > 0 ? COMPARED : GROWING;
    expect(found).toEqual(order.filter((section) => found.includes(section) || !OPTIONAL.includes(section)));
  });

  test('what stands on two lines is no single word where text is copied, read aloud or searched', () => {
    expect(html).not.toMatch(/[^\s>]<\/(?:a|strong)><span[^>]*>[^\s<]/);
  });

  test('tells search engines and reference managers what it is, in data that nothing runs', () => {
    const [block, ...others] = html.matchAll(/<script[^>]*>([^]*?)<\/script>/g);
    expect(others).toEqual([]);
    expect(block?.[0]).toMatch(/^<script type="application\/ld\+json">/);
    const { '@graph': graph } = JSON.parse(block?.[1] ?? '');
    const types = graph.map((node: Record<string, unknown>) => node['@type']);
    expect(types).toEqual(analysis.results.length > 0 ? ['Dataset', 'ScholarlyArticle'] : ['Dataset']);
    expect(graph[0].description.length).toBeGreaterThanOrEqual(50);
    expect(existsSync(join(site.folder, page, 'data', graph[0].distribution[0].contentUrl.split('/').at(-1)))).toBe(
      true,
    );
    for (const name of ['DC.title', 'DC.creator', 'citation_title', 'citation_author']) {
      expect(html).toContain(`<meta name="${name}"`);
    }
  });

  test('is cited with the digest of the inputs in its analysis.json', () => {
    const digest = sha256(Buffer.from(canonicalJson(analysis.inputs))).slice(0, 12);
    expect(html).toMatch(new RegExp(`Version \\d+, digest ${digest}\\.`));
  });

  test('offers a repeat kit where there is one', () => {
    const name = `repeat-${id}.zip`;
    expect(html.includes(`/data/${name}" download`)).toBe(existsSync(join(site.folder, page, 'data', name)));
  });

  test('publishes its raw files byte for byte, with their digests', () => {
    for (const { file, sha256: digest } of analysis.inputs) {
      const source = join(content, 'trials', id, file);
      if (!existsSync(source) || file === 'lots.yaml' || file === 'people.yaml') continue;
      expect(read(`${page}data/${file}`).equals(readFileSync(source)), file).toBe(true);
      expect(sha256(readFileSync(source))).toBe(digest);
    }
    for (const [, file = '', digest] of html.matchAll(/\/data\/([^"]+)">[^]*?<code>([0-9a-f]{64})<\/code>/g)) {
      expect(digest, file).toBe(sha256(read(`${page}data/${file}`)));
    }
    expect(html).toContain(sha256(read(`${page}data/analysis.json`)));
  });

  test('says every caveat of the analysis', () => {
    const text = html
      .replace(/<a href="[^"]*\/glossary\/#[^"]*">([^<]*)<\/a>/g, '$1')
      .replaceAll('&#39;', "'")
      .replaceAll('&quot;', '"')
      .replaceAll('&amp;', '&')
      .replaceAll('&lt;', '<')
      .replaceAll('&gt;', '>');
    for (const { id: caveat, text: sentence } of analysis.caveats) expect(text, caveat).toContain(sentence);
  });

  test('compares nothing while the trial grows', () => {
    if (analysis.results.length > 0) return;
    expect(html).not.toContain('class="findings');
    expect(html).not.toContain('id="results"');
  });

  test('shows its pictures without where they were taken, each described', () => {
    const pictures = [...html.matchAll(/<img [^>]*src="[^"]*\/photos\/([^"]+)"[^>]*>/g)];
    expect(pictures.length > 0).toBe(html.includes('id="photos"'));
    for (const [tag, name = ''] of pictures) {
      expect(tag).toMatch(/alt="[^"]+"/);
      expect(read(`${page}photos/${name}`).includes('Exif')).toBe(false);
    }
  });

  test('names each chart by a text and repeats it as a table', () => {
    const figures = [...html.matchAll(/<figure [^]*?<\/figure>/g)].map(([figure]) => figure);
    for (const figure of figures) {
      expect(figure).toMatch(/role="img" aria-label="[^"]{20,}"/);
      if (!/<a href="#result-/.test(figure)) expect(figure).toMatch(/<table[ >][^]*<caption>[^]*<th scope="col"/);
    }
    const measured = analysis.results.some(({ groups }: { groups: unknown[] }) => groups.length > 0);
    if (measured) expect(figures.length).toBeGreaterThan(0);
  });
});
