import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readSite } from '../../src/trial/read-site.ts';
import type { Trial } from '../../src/trial/trial.ts';
import { filesOf, readChanged, SITE_FILES, TRIAL_FILES, type TextFiles } from './trial-files.ts';

const RUNS = { seed: 20261125, numRuns: 300 };

/** The trial without what may differ between two ways of writing the same: lines, digests, how it was read. */
function essence(changed: TextFiles) {
  const { trial, problems } = readChanged(changed);
  expect(problems.filter(({ level }) => level === 'error')).toEqual([]);
  if (trial === null) throw new Error('no trial');
  const { inputs: _inputs, readAs: _readAs, ...rest } = trial as Trial;
  return JSON.parse(JSON.stringify(rest, (key, value) => (key === 'line' ? undefined : value)));
}

type Rows = readonly (readonly string[])[];
const IDS = ['s01', 's02', 's03', 's04'];

/** Rows of a counts table: rising totals of each sowing on days with and without decimals, some not checked. */
const countRows = fc
  .tuple(
    fc.uniqueArray(fc.integer({ min: 1, max: 60 }), { minLength: 1, maxLength: 6 }),
    fc.array(fc.array(fc.option(fc.integer({ min: 0, max: 8 }), { freq: 6 }), { minLength: 6, maxLength: 6 }), {
      minLength: 4,
      maxLength: 4,
    }),
  )
  .map(([halfDays, steps]): Rows => {
    const days = halfDays.toSorted((a, b) => a - b).map((half) => String(half / 2));
    return IDS.flatMap((id, sowing) => {
      let total = 0;
      return days.map((day, index) => {
        const step = steps[sowing]?.[index] ?? null;
        total += step ?? 0;
        return [id, day, step === null ? 'NC' : String(total)];
      });
    });
  });

interface Habit {
  readonly separator: ',' | ';' | '\t';
  readonly comma: boolean;
  readonly lineEnd: '\n' | '\r\n' | '\r';
  readonly encoding: 'utf-8' | 'utf-8-bom' | 'utf-16le' | 'utf-16be' | 'windows-1252';
  readonly quoted: boolean;
  readonly sepLine: boolean;
  readonly blankEnds: boolean;
  readonly fullWidth: boolean;
}
const habit: fc.Arbitrary<Habit> = fc.record({
  separator: fc.constantFrom(',', ';', '\t'),
  comma: fc.boolean(),
  lineEnd: fc.constantFrom('\n', '\r\n', '\r'),
  encoding: fc.constantFrom('utf-8', 'utf-8-bom', 'utf-16le', 'utf-16be', 'windows-1252'),
  quoted: fc.boolean(),
  sepLine: fc.boolean(),
  blankEnds: fc.boolean(),
  fullWidth: fc.boolean(),
});

/** A table as a spreadsheet of that habit would write it. */
function written(rows: Rows, habits: Habit): Uint8Array {
  const { separator, comma, lineEnd, encoding, quoted, sepLine, blankEnds } = habits;
  const wide = habits.fullWidth && encoding !== 'windows-1252';
  const cell = (text: string) => {
    const number = comma && separator === ';' && /^\d+\.\d+$/.test(text) ? text.replace('.', ',') : text;
    const digits =
      wide && /^\d+$/.test(number) ? number.replace(/\d/g, (d) => String.fromCharCode(0xff10 + Number(d))) : number;
    return quoted ? `"\u00a0${digits} "` : digits;
  };
  const lines = rows.map((row) => [...row.map(cell), ...(blankEnds ? ['', ''] : [])].join(separator));
  const width = (rows[0]?.length ?? 0) + (blankEnds ? 2 : 0);
  const ends = blankEnds ? [separator.repeat(width - 1), '', ''] : [''];
  return encoded([...(sepLine ? [`sep=${separator}`] : []), ...lines, ...ends].join(lineEnd), encoding);
}

function encoded(text: string, encoding: Habit['encoding']): Uint8Array {
  if (encoding === 'windows-1252') return Uint8Array.from([...text].map((letter) => letter.codePointAt(0) ?? 0));
  const marked = encoding === 'utf-8' ? text : `\uFEFF${text}`;
  if (encoding === 'utf-8' || encoding === 'utf-8-bom') return new TextEncoder().encode(marked);
  const bytes = new Uint8Array(marked.length * 2);
  const view = new DataView(bytes.buffer);
  for (let index = 0; index < marked.length; index++) {
    view.setUint16(index * 2, marked.charCodeAt(index), encoding === 'utf-16le');
  }
  return bytes;
}

const HEAD = ['sowing', 'day', 'germinated', 'note'];
const csv = (rows: Rows) => rows.map((row) => `${row.join(',')}\n`).join('');

test('encoding, separator, decimal mark and line ends do not change the trial', () => {
  fc.assert(
    fc.property(countRows, habit, (rows, habits) => {
      const noted = [HEAD, ...rows.map((row) => [...row, 'früh'])];
      expect(essence({ 'counts.csv': written(noted, habits) })).toEqual(essence({ 'counts.csv': csv(noted) }));
    }),
    RUNS,
  );
});

test('the order of rows and of columns does not change the trial', () => {
  const shuffled = countRows.chain((rows) =>
    fc.tuple(
      fc.constant(rows),
      fc.shuffledSubarray([...rows], { minLength: rows.length }),
      fc.shuffledSubarray([0, 1, 2], { minLength: 3 }),
    ),
  );
  fc.assert(
    fc.property(shuffled, ([rows, other, columns]) => {
      const table = [HEAD.slice(0, 3), ...other].map((row) => columns.map((column) => row[column] ?? ''));
      expect(essence({ 'counts.csv': csv(table) })).toEqual(
        essence({ 'counts.csv': csv([HEAD.slice(0, 3), ...rows]) }),
      );
    }),
    RUNS,
  );
});

test('the long and the wide layout give the same counts', () => {
  fc.assert(
    fc.property(countRows, (rows) => {
      const days = [...new Set(rows.map(([, day = '']) => day))];
      const wide = IDS.map((id) => [
        id,
        ...days.map((day) => rows.find((row) => row[0] === id && row[1] === day)?.[2] ?? 'NC'),
      ]);
      const wideTable = [['sowing', ...days.map((day) => `day ${day}`)], ...wide];
      expect(essence({ 'counts.csv': csv(wideTable) })).toEqual(
        essence({ 'counts.csv': csv([HEAD.slice(0, 3), ...rows]) }),
      );
    }),
    RUNS,
  );
});

test('counts of new seedlings give the same trial as totals so far', () => {
  fc.assert(
    fc.property(countRows, (rows) => {
      const last = new Map<string, number>();
      const fresh = rows.map(([id = '', day = '', total = '']) => {
        if (total === 'NC') return [id, day, total];
        const before = last.get(id) ?? 0;
        last.set(id, Number(total));
        return [id, day, String(Number(total) - before)];
      });
      const counts = (mode: string) => ({ 'trial.yaml': `${TRIAL_FILES['trial.yaml']}scoring: { counts: ${mode} }\n` });
      const head = HEAD.slice(0, 3);
      expect(essence({ ...counts('new'), 'counts.csv': csv([head, ...fresh]) }).counts).toEqual(
        essence({ ...counts('cumulative'), 'counts.csv': csv([head, ...rows]) }).counts,
      );
    }),
    RUNS,
  );
});

/** Files worth breaking: one of each kind. */
const WHOLE: TextFiles = {
  ...TRIAL_FILES,
  'trial.yaml': `${TRIAL_FILES['trial.yaml']}outcomes:\n  - id: germination\n    measure: germination\n    day: { leek-2025: 8 }\ndeviations:\n  - { day: 6, sowings: [s01], what: "tipped: over", action: kept }\nconditions: &c { place: porch }\n`,
  'lots.yaml': 'cress:\n  crop: cress\n  species: Lepidium sativum\n  moisture: 8.5\n',
  'people.yaml': 'tom:\n  name: Tom Example\n  url: https://example.org\n',
  'plan.yaml': 'fixed: 2026-04-01\nquestion: Does it?\nlots: [leek-2025]\n',
  'key.csv': 'sowing,treatment\ns01,packet\ns02,jar\n',
  'fates.csv': 'sowing,day,dead,note\ns01,8,2,"mould, grey"\n',
  'measurements.csv': 'sowing;day;plant;height (mm);leaves\ns01;8;1;20,5;2\ns02;8;1;22,5;2\n',
  'weighings.csv': 'lot,treatment,stage,mass (g),container (g)\nleek-2025,jar,before,12.5,2\n',
  'events.csv': 'date,sowing,what,action\n2026-04-09,s03,turned,care\n',
  'photos/captions.yaml': '8-s01.jpg: { caption: Tray, day: 8 }\n',
  'photos/8-s01.jpg': '',
};
const PIECES = [
  ',',
  ';',
  '"',
  '\n',
  '\r',
  '\t',
  ':',
  '- ',
  '[',
  '{',
  '&a',
  '*a',
  '!x',
  '#',
  "'",
  '|',
  '=1',
  '~',
  '%',
  '\0',
  '\u00e9',
  '\ufeff',
  '-',
  '9',
  '0',
  'sep=;\n',
  '? ',
  '<<: ',
  '__proto__',
  'constructor',
];

interface Edit {
  readonly at: number;
  readonly cut: number;
  readonly put: string | Uint8Array;
}
const edit: fc.Arbitrary<Edit> = fc.record({
  at: fc.double({ min: 0, max: 1, noNaN: true }),
  cut: fc.integer({ min: 0, max: 12 }),
  put: fc.oneof(fc.constantFrom(...PIECES), fc.uint8Array({ maxLength: 4 }), fc.string({ maxLength: 6 })),
});

function edited(text: string, edits: readonly Edit[]): Uint8Array {
  let bytes = new TextEncoder().encode(text);
  for (const { at, cut, put } of edits) {
    const start = Math.floor(at * bytes.length);
    const piece = typeof put === 'string' ? new TextEncoder().encode(put) : put;
    bytes = new Uint8Array([...bytes.subarray(0, start), ...piece, ...bytes.subarray(start + cut)]);
  }
  return bytes;
}

const linesOf = (bytes: Uint8Array) => new TextDecoder().decode(bytes).split(/\r\n|\r|\n/).length;

test.each(Object.keys(WHOLE).filter((name) => !name.endsWith('.jpg')))(
  '%s with any bytes changed is read or refused with places inside it, never a crash',
  (name) => {
    fc.assert(
      fc.property(fc.array(edit, { minLength: 1, maxLength: 4 }), (edits) => {
        const bytes = edited(String(WHOLE[name]), edits);
        const { trial, problems } = readChanged({ ...WHOLE, [name]: bytes });
        const errors = problems.filter(({ level }) => level === 'error');
        expect(trial === null).toBe(errors.length > 0);
        for (const { file, line, column, message, remedy } of problems) {
          expect(message.length).toBeGreaterThan(5);
          expect(remedy).toMatch(/[.?]$/);
          if (!file.endsWith(`/${name}`) || line === null) continue;
          expect(line).toBeGreaterThanOrEqual(1);
          expect(line).toBeLessThanOrEqual(linesOf(bytes));
          expect(column).toBeGreaterThanOrEqual(1);
        }
        if (trial) expect(JSON.stringify(trial)).not.toMatch(/NaN|Infinity|undefined/);
      }),
      { seed: 20261125, numRuns: 400 },
    );
  },
);

test.each(Object.keys(SITE_FILES))('site file %s with any bytes changed never crashes', (name) => {
  fc.assert(
    fc.property(fc.array(edit, { minLength: 1, maxLength: 4 }), (edits) => {
      const bytes = edited(SITE_FILES[name as keyof typeof SITE_FILES], edits);
      const { site, problems } = readSite(filesOf(SITE_FILES, { [name]: bytes }), 'content');
      expect(site.language).toMatch(/^[A-Za-z]/);
      for (const { line } of problems) expect(line ?? 1).toBeLessThanOrEqual(linesOf(bytes));
    }),
    { seed: 20261125, numRuns: 400 },
  );
});
