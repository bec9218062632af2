import { cpSync, existsSync, globSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import { astroBuild } from '../support/build-site.ts';

/* A site whose contributors try to get code into it: what is refused is left out, what is let pass is text. */

const root = join(import.meta.dirname, '..', '..');
const HOSTILE = `"'><script>alert(1)</script><img src=x onerror=alert(1)>]]>javascript:alert(1)`;

const inYaml = (text: string) => `'${text.replaceAll("'", "''")}'`;

test('nothing that a contributor writes becomes code, in HTML, SVG, feeds or JSON', () => {
  const folder = mkdtempSync(join(tmpdir(), 'fairsown-attacks-'));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  const content = join(folder, 'content');
  cpSync(join(root, 'content'), content, { recursive: true });
  const change = (file: string, by: (text: string) => string) =>
    writeFileSync(join(content, file), by(readFileSync(join(content, file), 'utf8')));

  change('site.yaml', (text) => text.replace(/^on_problem: .*$/m, 'on_problem: leave-out'));
  // Refused: the trial is left out, and its text is never compiled.
  change('trials/tomato-tin-or-envelope/report.mdx', (text) => `${text}\n<script>alert("kept-out-words")</script>\n`);
  change(
    'trials/carrots-under-vermiculite/report.md',
    () => `---\nlayout: ${folder}/none.astro\n---\n\nkept-out-words\n`,
  );
  // Let pass, as text.
  change('trials/parsley-soaked-a-day/trial.yaml', (text) =>
    text
      .replace(/^title: .*$/m, `title: ${inYaml(`Title ${HOSTILE}`)}`)
      .replace(/^question: .*$/m, `question: ${inYaml(`Question ${HOSTILE}`)}`)
      .replace(/label: .*$/gm, (_, at: number) => `label: ${inYaml(`L${at} ${HOSTILE}`)}`),
  );
  change(
    'trials/parsley-soaked-a-day/report.mdx',
    (text) =>
      `${text}\n&lt;script&gt;alert(1)&lt;/script&gt; \\<script>alert(1)\\</script>\n\n{"<script>alert(1)</script>"}\n`,
  );
  change('trials/peas-soaked-allotment/report.md', (text) => `${text}\n<!-- told to nobody -->\n`);

  const { status, output } = astroBuild(join(folder, 'dist'), content);
  expect(status, output).toBe(0);
  expect(existsSync(join(folder, 'dist/trials/parsley-soaked-a-day/index.html'))).toBe(true);
  expect(existsSync(join(folder, 'dist/trials/tomato-tin-or-envelope/index.html'))).toBe(false);
  expect(existsSync(join(folder, 'dist/trials/carrots-under-vermiculite/index.html'))).toBe(false);

  const list = readFileSync(join(folder, 'dist/trials/index.html'), 'utf8');
  const left = list.slice(list.indexOf('id="left-out"'));
  expect(left).toContain('<h3>carrots-under-vermiculite</h3>');
  expect(left).toContain('<h3>tomato-tin-or-envelope</h3>');
  expect(left).toContain('<code>trials/tomato-tin-or-envelope/report.mdx:');

  const page = readFileSync(join(folder, 'dist/trials/parsley-soaked-a-day/index.html'), 'utf8');
  expect(page).toContain('&lt;script&gt;alert(1)');
  for (const file of globSync('**/*.{html,svg,xml}', { cwd: join(folder, 'dist') })) {
    const text = readFileSync(join(folder, 'dist', file), 'utf8');
    // Inside quotes a "<" is text for a browser as well.
    const outside = text.replace(/="[^"]*"/g, '=""');
    expect(
      /<script>alert|<img src=x|told to nobody|kept-out-words|<[a-z][^<>]*\son\w+=/i.exec(outside)?.[0],
      file,
    ).toBe(undefined);
    expect(/(href|src|action|formaction)=["']?\s*(javascript|data|vbscript):/i.exec(text)?.[0], file).toBe(undefined);
  }
  for (const [, json = ''] of page.matchAll(/<script type="application\/ld\+json">([^]*?)<\/script>/g)) {
    expect(() => JSON.parse(json)).not.toThrow();
  }
});
