/**
 * How long a build takes, and how much memory: invented trials against bare Astro sites of as many pages of about as much
 * HTML, one after the other in the same run. `node tests/bench/site.ts [trials] [times] [cold]`: 100 trials once where nothing is said;
 * medians of several times; with `cold` only ours with nothing kept, once: how ten thousand trials are measured. Linux only.
 *
 * Ours is built with nothing kept (cold), with only printed files, pictures, data folders and kits kept (pages cold), again as
 * it is (warm), and with one trial changed. Bare is built twice over: of MDX pages with the same integrations, search included, which is what a site
 * of as many write-ups would be, and of one page that is filled from a list.
 */
import { spawn } from 'node:child_process';
import {
  appendFileSync,
  globSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  rmSync,
  statfsSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout } from 'node:timers/promises';
import { KEPT_IN } from '../../src/files/kept/build-keeper.ts';
import { generateSite } from './generate-site.ts';
import { memoryOf } from './memory-of.ts';

const root = join(import.meta.dirname, '..', '..');
const folder = mkdtempSync(join(tmpdir(), 'fairsown-bench-'));
const content = join(folder, 'content');
const asked = process.argv.slice(2);
const isColdOnly = asked.includes('cold');
const [trials = 100, times = 1] = asked.filter((word) => word !== 'cold').map(Number);

/** Bytes on the disk for the trials, their site and what is kept of them, a few times over. */
const NEEDED = 20e9 * (trials / 10_000);

/** What is kept of readings, analyses and pages; the rest is printed files, pictures and what is zipped. */
const MADE_BY_PAGES = ['reading', 'trial', 'report', 'recheck', 'common-cases'];

/** Paragraphs of a bare page that can be searched, about as much text as that of a report is. */
const SEARCHED = 170;

interface Build {
  readonly seconds: number;
  /** Most memory of all its processes together at one time, MB; looked at ten times a second. */
  readonly peak: number;
  readonly pages: number;
  /** kB a page, mean of the pages that stand for trials. */
  readonly html: number;
}

try {
  const { bavail, bsize } = statfsSync(folder);
  if (bavail * bsize < NEEDED)
    throw new Error(`${folder} has ${(bavail * bsize) / 1e9} GB free; ${trials} trials need ${NEEDED / 1e9} GB`);
  await (isColdOnly ? cold() : all());
} finally {
  rmSync(folder, { recursive: true, force: true });
}

/** Ours, of the content as it is. */
function ours(): Promise<Build> {
  const command = [...buildCommand(), '--outDir', join(folder, 'dist')];
  return build(root, command, 'trials/trial-*/index.html', { FAIRSOWN_CONTENT: content });
}

async function cold(): Promise<Build> {
  rmSync(content, { recursive: true, force: true });
  generateSite(content, trials);
  rmSync(join(root, KEPT_IN), { recursive: true, force: true });
  return print('cold', await ours());
}

async function all(): Promise<void> {
  const runs: Readonly<Record<'cold' | 'pages' | 'warm' | 'changed' | 'mdx' | 'list', Build>>[] = [];
  for (let run = 0; run < times; run++) {
    const made = await cold();
    for (const kind of MADE_BY_PAGES) rmSync(join(root, KEPT_IN, kind), { recursive: true, force: true });
    const pages = print('pages cold', await ours());
    const warm = print('warm', await ours());
    appendFileSync(join(content, 'trials', 'trial-001', 'trial.yaml'), `summary: changed ${run}\n`);
    const changed = print('one changed', await ours());
    const mdx = print('bare MDX', await bare('mdx', made.html));
    const list = print('bare list', await bare('list', made.html));
    runs.push({ cold: made, pages, warm, changed, mdx, list });
  }
  const median = (of: keyof (typeof runs)[number]) =>
    runs.map((run) => run[of].seconds).toSorted((a, b) => a - b)[Math.floor(runs.length / 2)] ?? NaN;
  for (const which of ['cold', 'pages', 'warm', 'changed'] as const) {
    const ratio = (to: 'mdx' | 'list') => (median(which) / median(to)).toFixed(1);
    console.log(`${which.padEnd(12)} ${ratio('mdx')} × bare MDX, ${ratio('list')} × bare list`);
  }
}

async function build(
  cwd: string,
  command: readonly string[],
  pages: string,
  env: Readonly<Record<string, string>> = {},
): Promise<Build> {
  const outDir = command.at(-1) ?? '';
  const start = performance.now();
  const child = spawn(process.execPath, command, {
    cwd,
    env: { ...process.env, ...env, ASTRO_TELEMETRY_DISABLED: '1' },
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  const said: Buffer[] = [];
  for (const stream of [child.stdout, child.stderr]) stream.on('data', (part: Buffer) => said.push(part));
  const over = Promise.withResolvers<number | null>();
  let seconds = NaN;
  child.once('error', over.reject).once('close', (code) => {
    seconds = (performance.now() - start) / 1000;
    over.resolve(code);
  });
  let peak = 0;
  while (child.exitCode === null && child.signalCode === null) {
    peak = Math.max(peak, memoryOf(child.pid ?? 0));
    await setTimeout(100);
  }
  if ((await over.promise) !== 0) throw new Error(`astro build failed:\n${Buffer.concat(said).toString()}`);
  const files = globSync(pages, { cwd: outDir });
  const bytes = files.reduce((sum, file) => sum + statSync(join(outDir, file)).size, 0);
  return { seconds, peak, pages: files.length, html: bytes / files.length / 1000 };
}

/** What `npm run build` calls Node with. */
function buildCommand(): string[] {
  const { scripts } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'));
  return scripts.build.split(' ').slice(1);
}

/** An Astro project that does nothing but write pages of a given size. */
function bare(kind: 'mdx' | 'list', kilobytes: number): Promise<Build> {
  const path = join(folder, kind);
  rmSync(path, { recursive: true, force: true });
  const pages = join(path, 'src', 'pages', 'pages');
  mkdirSync(pages, { recursive: true });
  symlinkSync(join(root, 'node_modules'), join(path, 'node_modules'), 'dir');
  writeFileSync(join(path, 'package.json'), '{ "type": "module" }\n');
  writeFileSync(
    join(path, 'astro.config.mjs'),
    kind === 'mdx'
      ? `import mdx from '@astrojs/mdx';
import sitemap from '@astrojs/sitemap';
import { readFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { close, createIndex } from 'pagefind';
const search = { name: 'search', hooks: { 'astro:build:done': async ({ dir, pages }) => {
  const { index } = await createIndex({ rootSelector: 'main' });
  for (const { pathname } of pages)
    await index.addHTMLFile({ url: '/' + pathname, content: await readFile(new URL(pathname + 'index.html', dir), 'utf8') });
  await index.writeFiles({ outputPath: fileURLToPath(new URL('pagefind', dir)) });
  await close();
} } };
export default { site: 'https://bench.example', integrations: [mdx(), sitemap(), search] };
`
      : 'export default {};\n',
  );
  const lines = Math.round(kilobytes * 10);
  const line = (number: number | string, page: number | string) =>
    `Paragraph ${number} of page ${page}, as long as it takes for one hundred bytes of HTML, no more.`;
  if (kind === 'mdx') {
    for (let page = 0; page < trials; page++) {
      const texts = Array.from({ length: lines }, (_, number) => line(number, page));
      const [found, others] = [texts.slice(0, SEARCHED), texts.slice(SEARCHED)].map((some) => some.join('\n\n'));
      writeFileSync(join(pages, `${page}.mdx`), `<main>\n\n# Page ${page}\n\n${found}\n\n</main>\n\n${others}\n`);
    }
  } else {
    writeFileSync(
      join(pages, '[page].astro'),
      `---
export const getStaticPaths = () => Array.from({ length: ${trials} }, (_, page) => ({ params: { page: String(page) } }));
const paragraphs = Array.from({ length: ${lines} }, (_, line) => line);
---
<!doctype html>
<html lang="en"><head><title>{Astro.params.page}</title></head><body>
{paragraphs.map((line) => <p>${line('{line}', '{Astro.params.page}')}</p>)}
</body></html>
`,
    );
  }
  const astro = join(root, 'node_modules', 'astro', 'bin', 'astro.mjs');
  return build(path, [astro, 'build', '--outDir', join(path, 'dist')], 'pages/*/index.html');
}

function print(name: string, made: Build): Build {
  const { seconds, peak, pages, html } = made;
  console.log(
    `${name.padEnd(12)} ${pages} pages of ${html.toFixed(0)} kB: ${seconds.toFixed(1)} s, peak ${peak.toFixed(0)} MB`,
  );
  return made;
}
