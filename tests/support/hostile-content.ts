import {
  appendFileSync,
  cpSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { parse as parseCsv } from 'csv-parse/sync';
import { parse, stringify } from 'yaml';

const demonstration = join(import.meta.dirname, '..', '..', 'content');

/** Free text meant for a parser: HTML, SVG, Markdown, templates, Typst, R, CSV, JSON, XML; and a word without an end. */
export const HOSTILE_TEXT = [
  `"'><script>alert(1)</script><img src=x onerror=alert(2)><svg/onload=alert(3)></style></title></textarea></script>`,
  `--><!-- ]]>&lt;b&gt;&#106;\u2028 javascript:alert(4) [l](javascript:alert(5)) ![i](https://evil.example/i.png)`,
  '{{x}} ${x} {x} {"x"} <%= x %> #panic("x") #read("/etc/passwd") $x^2$ @x <x> *b* _e_ `r` \\u{1F331} \\" \\n',
  `'; system("id") # =HYPERLINK("https://evil.example","x") \u{1F331}\u{1F469}\u200D\u{1F33E} e\u0301 ${'W'.repeat(300)}`,
].join(' ');

/** The same for what is called by a name, which is short. */
export const HOSTILE_NAME = `"'><img src=x onerror=alert(6)></b>&\${x}{{x}}#x$x$\\ \u{1F331}`;
export const HOSTILE_PHOTO = `14-onerror=alert(7) '&;{{x}}\${x}[(!@=+,~^\`)] \u{1F331}.png`;

/** What a report may hold: all of it is text. */
const HOSTILE_PROSE = `

## \\<script>alert(8)\\</script> {"<img src=x onerror=alert(9)>"}

&lt;script&gt;alert(10)&lt;/script&gt; \`<script>alert(11)</script>\` {"</p><script>alert(12)</script>"}
<abbr title="x&quot; onmouseover=&quot;alert(13)">short</abbr> [a](https://evil.example/?q="%3E%3Cscript%3E 'x" onclick="alert(14)')
[mail](mailto:a@b.example?body=%3Cscript%3E) ${'W'.repeat(300)}

\`\`\`html
<script>alert(15)</script>{{x}}\${x}
\`\`\`

| a | b |
| --- | --- |
| \`<img src=x onerror=alert(16)>\` | {"{{x}}"} |
`;

/** In what is refused, in comments and in what lies outside the content folder: published nowhere. */
export const KEPT_OUT = 'kept-out-words';

/** Keys of YAML files that hold free text; `tests/site/hostile.test.ts` compares them with the schemas. */
export const TEXT_KEYS = new Set(
  `title question summary label handling container block germinated interests what why name affiliation crop species
  cultivar supplier origin accession storage note caption alt impression conditions roles notices`.split(/\s+/),
);
/** Chosen from a list in trial.yaml, free text in the frozen copy. */
export const PLAN_KEYS = ['varies', 'seed'];
const NAME_COLUMNS = ['sowing', 'batch', 'tray', 'block', 'position', 'label', 'plant', 'repeat', 'scorer'];
const TEXT_COLUMNS = ['note', 'what'];
/** Trials that show everything between them: pictures, weighings, plan, prose, a count under way, storage, a shared question. */
const TRIALS = [
  'herbs-lit-or-covered',
  'onion-dried-before-freezing',
  'leek-wet-start',
  'parsnip-shed-or-jar',
  'parsley-soaked-a-day',
  'peas-soaked-allotment',
  'peas-soaked-school',
];
/** Trials that are refused, each for another attempt; `KEPT_OUT` stands in all of them. */
const REFUSED: Readonly<Record<string, (trial: string, folder: string) => void>> = {
  'tomato-tin-or-envelope': (trial) =>
    appendFileSync(join(trial, 'report.mdx'), `\n<script>alert("${KEPT_OUT}")</script>\n`),
  'carrots-under-vermiculite': (trial, folder) =>
    writeFileSync(join(trial, 'report.md'), `---\nlayout: ${folder}/none.astro\n---\n\n${KEPT_OUT}\n`),
  'spinach-fresh-or-old': (trial, folder) => {
    writeFileSync(join(folder, 'outside.csv'), `day,what,action\n3,${KEPT_OUT},care\n`);
    symlinkSync(join(folder, 'outside.csv'), join(trial, 'events.csv'));
  },
  'lettuce-surface-or-covered': (trial, folder) => {
    mkdirSync(join(folder, 'outside'));
    writeFileSync(join(folder, 'outside', '8-x.png'), KEPT_OUT);
    symlinkSync(join(folder, 'outside'), join(trial, 'photos'));
  },
};
export const REFUSED_TRIALS = Object.keys(REFUSED);

/**
 * Writes a content folder, `content` in the one given, like that of the demonstration whose every text is hostile: each field, each name, the name of
 * a picture.
 */
export function hostileContent(outside: string): void {
  const folder = join(outside, 'content');
  mkdirSync(join(folder, 'trials'), { recursive: true });
  for (const name of ['site.yaml', 'people.yaml', 'lots.yaml']) rewrite(demonstration, folder, name);
  const questions = parse(readFileSync(join(demonstration, 'questions.yaml'), 'utf8'));
  for (const question of Object.values<{ trials: string[] }>(questions)) question.trials = question.trials.filter((id) => TRIALS.includes(id)); // prettier-ignore
  writeFileSync(join(folder, 'questions.yaml'), stringify(hostile(questions)));

  for (const id of TRIALS) {
    const [from, to] = [join(demonstration, 'trials', id), join(folder, 'trials', id)];
    cpSync(from, to, { recursive: true });
    for (const name of readdirSync(to).filter((file) => /\.(yaml|csv)$/.test(file))) rewrite(from, to, name);
    const prose = join(to, 'report.mdx');
    if (existsSync(prose)) appendFileSync(prose, HOSTILE_PROSE);
    const photos = join(to, 'photos');
    if (existsSync(photos)) {
      renameSync(join(photos, '14-sage-lit.png'), join(photos, HOSTILE_PHOTO));
      const captions = parse(readFileSync(join(photos, 'captions.yaml'), 'utf8'));
      const { '14-sage-lit.png': lit, ...others } = captions;
      writeFileSync(join(photos, 'captions.yaml'), stringify(hostile({ ...others, [HOSTILE_PHOTO]: lit })));
    }
  }
  appendFileSync(join(folder, 'trials/peas-soaked-allotment/report.md'), `\n<!-- ${KEPT_OUT} -->\n`);
  for (const [id, refuse] of Object.entries(REFUSED)) {
    cpSync(join(demonstration, 'trials', id), join(folder, 'trials', id), { recursive: true });
    refuse(join(folder, 'trials', id), outside);
  }
}

function rewrite(from: string, to: string, name: string): void {
  const text = readFileSync(join(from, name), 'utf8');
  writeFileSync(join(to, name), name.endsWith('.csv') ? hostileTable(text) : stringify(hostile(withMore(name, parse(text)), name === 'plan.yaml'))); // prettier-ignore
}

/** Fields that the demonstration leaves out. */
function withMore(name: string, value: Record<string, unknown>): Record<string, unknown> {
  if (name === 'lots.yaml') return Object.fromEntries(Object.entries(value).map(([id, lot]) => [id, { ...(lot as object), origin: 'x', accession: 'x', note: 'x' }])); // prettier-ignore
  if (name === 'site.yaml') return { ...value, on_problem: 'leave-out' };
  if (name === 'plan.yaml') return { seed: 'x', ...value };
  if (name !== 'trial.yaml') return value;
  const { status, authors, sowing } = value as { status: string; authors: string[]; sowing: object };
  const told = { summary: 'x', roles: Object.fromEntries(authors.map((id) => [id, ['counted', 'x']])), interests: 'x' };
  const history = { changes: [{ date: '2026-11-20', what: 'x', why: 'x' }] };
  return {
    impression: 'x',
    ...value,
    sowing: { block: 'x', ...sowing },
    ...told,
    ...(status === 'finished' ? history : {}),
  };
}

function hostile(value: unknown, isPlan = false, key = ''): unknown {
  if (Array.isArray(value)) return value.map((each) => hostile(each, isPlan, key));
  if (value !== null && typeof value === 'object') {
    // Below conditions, impression, roles and notices everything is text, and keys of conditions are too.
    const below = ['conditions', 'impression', 'roles', 'notices'].includes(key);
    return Object.fromEntries(
      Object.entries(value).map(([name, each]) => [
        key === 'conditions' ? `${name} ${HOSTILE_NAME}` : name,
        hostile(each, isPlan, below ? key : name),
      ]),
    );
  }
  if (typeof value !== 'string') return value;
  if (key === 'sowings' || key === 'sowing' || key === 'column') return hostileName(value);
  return TEXT_KEYS.has(key) || (isPlan && PLAN_KEYS.includes(key)) ? `${value} ${HOSTILE_TEXT}` : value;
}

const hostileName = (name: string): string => (name === '' ? '' : `${name} ${HOSTILE_NAME}`);

function hostileTable(text: string): string {
  const delimiter = text.split('\n')[0]?.includes('\t') ? '\t' : ',';
  const [head = [], ...rows] = parseCsv(text, { delimiter, relax_column_count: true }) as string[][];
  const changed = rows.map((row) =>
    row.map((cell, index) => {
      const column = head[index] ?? '';
      if (NAME_COLUMNS.includes(column)) return hostileName(cell);
      return TEXT_COLUMNS.includes(column) && cell !== '' ? `${cell} ${HOSTILE_TEXT}` : cell;
    }),
  );
  const traits = head.map((name) => name.replace(/^(height|leaves)\b/, (trait) => hostileName(trait)));
  const quoted = (cell: string) => `"${cell.replaceAll('"', '""')}"`;
  return [traits, ...changed].map((row) => `${row.map(quoted).join(',')}\n`).join('');
}
