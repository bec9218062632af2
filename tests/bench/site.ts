/**
 * How long a build takes, and how much memory: 100 invented trials against a bare Astro site of as many pages of
 * about as much HTML, one after the other in the same run. `node tests/bench/site.ts [trials]`.
 */
import { spawnSync } from 'node:child_process';
import { globSync, mkdirSync, mkdtempSync, readFileSync, rmSync, statSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { generateSite } from './generate-site.ts';

const root = join(import.meta.dirname, '..', '..');
const folder = mkdtempSync(join(tmpdir(), 'fairsown-bench-'));
const trials = Number(process.argv[2] ?? 100);

interface Build {
  readonly seconds: number;
  /** Peak resident memory of the largest process, MB. */
  readonly peak: number;
  readonly pages: number;
  /** kB a page, mean of the pages that stand for trials. */
  readonly html: number;
}

try {
  generateSite(join(folder, 'content'), trials);
  const full = build(root, join(folder, 'dist'), 'trials/*/index.html', {
    FAIRSOWN_CONTENT: join(folder, 'content'),
  });
  bareSite(join(folder, 'bare'), full.html);
  const bare = build(join(folder, 'bare'), join(folder, 'bare', 'dist'), 'pages/*/index.html');
  print('trials', full);
  print('bare', bare);
  console.log(`ratio    ${(full.seconds / bare.seconds).toFixed(1)} in time, ${(full.peak / bare.peak).toFixed(1)} in memory`); // prettier-ignore
} finally {
  rmSync(folder, { recursive: true, force: true });
}

function build(cwd: string, outDir: string, pages: string, env: Readonly<Record<string, string>> = {}): Build {
  const peaks = join(folder, 'peaks');
  rmSync(peaks, { force: true });
  const note = `import{appendFileSync}from'node:fs';process.on('exit',()=>appendFileSync(${JSON.stringify(peaks)},process.resourceUsage().maxRSS+'\\n'))`;
  const start = performance.now();
  const { status, stdout, stderr } = spawnSync(
    process.execPath,
    [join(root, 'node_modules', 'astro', 'bin', 'astro.mjs'), 'build', '--outDir', outDir],
    {
      cwd,
      encoding: 'utf8',
      env: {
        ...process.env,
        ...env,
        ASTRO_TELEMETRY_DISABLED: '1',
        NODE_OPTIONS: `--import=data:text/javascript,${encodeURIComponent(note)}`,
      },
      maxBuffer: 2 ** 28,
    },
  );
  const seconds = (performance.now() - start) / 1000;
  if (status !== 0) throw new Error(`astro build failed:\n${stdout}${stderr}`);
  const files = globSync(pages, { cwd: outDir });
  const bytes = files.reduce((sum, file) => sum + statSync(join(outDir, file)).size, 0);
  const peak = Math.max(...readFileSync(peaks, 'utf8').trim().split('\n').map(Number)) / 1024;
  return { seconds, peak, pages: files.length, html: bytes / files.length / 1000 };
}

/** An Astro project that does nothing but write pages of a given size. */
function bareSite(path: string, kilobytes: number): void {
  mkdirSync(join(path, 'src', 'pages', 'pages'), { recursive: true });
  symlinkSync(join(root, 'node_modules'), join(path, 'node_modules'), 'dir');
  writeFileSync(join(path, 'package.json'), '{ "type": "module" }\n');
  writeFileSync(join(path, 'astro.config.mjs'), 'export default {};\n');
  writeFileSync(
    join(path, 'src', 'pages', 'pages', '[page].astro'),
    `---
export const getStaticPaths = () => Array.from({ length: ${trials} }, (_, page) => ({ params: { page: String(page) } }));
const paragraphs = Array.from({ length: ${Math.round(kilobytes * 10)} }, (_, line) => line);
---
<!doctype html>
<html lang="en"><head><title>{Astro.params.page}</title></head><body>
{paragraphs.map((line) => <p>Paragraph {line} of page {Astro.params.page}, as long as it takes for one hundred bytes of HTML, no more.</p>)}
</body></html>
`,
  );
}

function print(name: string, { seconds, peak, pages, html }: Build): void {
  console.log(
    `${name.padEnd(8)} ${pages} pages of ${html.toFixed(0)} kB: ${seconds.toFixed(1)} s, peak ${peak.toFixed(0)} MB`,
  );
}
