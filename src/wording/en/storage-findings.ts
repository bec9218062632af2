import type { Analysis, Group, Result } from '../../analysis/analysis.ts';
import type { SurvivalLine } from '../../analysis/survival-line.ts';
import type { Trial } from '../../trial/trial.ts';
import { jarsOpened } from '../jars-opened.ts';
import { sentence } from '../sentence.ts';
import { storageCase, storageCaveats, type StorageCase } from '../storage-case.ts';
import { storageTime } from '../storage-time.ts';
import type { StorageFinding, VerdictMark } from '../words.ts';
import { counted } from './counted.ts';
import { reasonsText } from './findings/reasons-text.ts';
import { shareText } from './findings/share-text.ts';
import { inUnit } from './in-unit.ts';
import { labelled } from './labelled.ts';
import { list } from './list.ts';
import { lotName } from './lot-name.ts';
import { noHalfLifeText } from './no-half-life-text.ts';
import { number } from './number.ts';
import { storedText } from './stored-text.ts';
import { unitWord } from './unit-word.ts';

/** A storage series: how its survival lines compare, then the half-life of each treatment or why there is none. */
export function storageFindings(trial: Trial, analysis: Analysis, result: Result): readonly StorageFinding[] {
  const lots = [...new Set((result.storage ?? []).map(({ lot }) => lot))];
  const soFar = trial.status === 'growing' ? 'So far, ' : '';
  return lots.flatMap((lot) => {
    const where = lots.length > 1 ? `${lotName(trial, lot)}: ` : '';
    const open = (text: string) =>
      where === '' ? sentence(`${soFar}${text}`) : `${where}${soFar.toLowerCase()}${text}`;
    const found = storageCase(result, lot);
    const own = (result.storage ?? []).filter((line) => line.lot === lot);
    return [
      ...(found === null
        ? []
        : [{ lot, treatment: null, ...comparedLines(trial, analysis, result, lot, found, open) }]),
      ...own.map((line) => ({
        lot,
        treatment: line.treatment,
        sentence: `${where}${where === '' ? sentence(lineText(trial, result, line)) : lineText(trial, result, line)}`,
        mark: null,
      })),
    ];
  });
}

function lineText(trial: Trial, result: Result, line: SurvivalLine): string {
  const seed = labelled(trial, line.treatment, 'seed');
  if (line.halfLife === null) return noHalfLifeText(seed, line);
  const { kind, count, tests } = jarsOpened(result, line);
  const times = line.tests.map(({ stored }) => stored);
  const [first, last] = [Math.min(...times), Math.max(...times)];
  const { perYear, unit, digits } = storageTime(last);
  const say = (years: number) => number(years * perYear, digits);
  const { estimate, lower, upper } = line.halfLife;
  const from = lower === null || lower < first ? 'some time before the first test' : say(lower);
  const to = upper === null || upper > last ? 'some time after the last test' : inUnit(say(upper), ` ${unit}`);
  const start = /^\d/.test(from) && !/^\d/.test(to) ? inUnit(from, ` ${unit}`) : from;
  const opened = `${counted(count, unitWord(trial, kind))} at ${counted(tests, 'test')}${first === 0 ? ' after the start' : ''}`;
  return `by the line through the tests, half of the ${seed} still came up after ${inUnit(say(estimate), ` ${unit}`)} of storage (the data fit with ${start} to ${to}; ${opened}).${count <= tests ? ` With one ${unitWord(trial, kind)} at a test, this is a first look.` : ''}`;
}

function comparedLines(
  trial: Trial,
  analysis: Analysis,
  result: Result,
  lot: string,
  found: StorageCase,
  open: (text: string) => string,
): { readonly sentence: string; readonly mark: VerdictMark } {
  const cannot: VerdictMark = { words: 'cannot tell', shape: 'question' };
  const settled: VerdictMark = { words: 'not settled', shape: 'open' };
  const ends = atTheEnd(trial, result, lot, found);
  const reasons = reasonsText(trial, analysis, storageCaveats(analysis.caveats, found, lot));
  const probably = found.ceiling === 'probably';
  const because = probably ? ` We say “probably” because ${reasons}.` : '';
  switch (found.case) {
    case 'no-line':
      return {
        sentence: open('which seed keeps longer is not compared: not every kind has a line through its tests.'),
        mark: cannot,
      };
    case 'one-jar':
      return {
        sentence: open(
          `it cannot be told which seed keeps longer. Not every kind had two jars or packets, known to be stored apart, at each test, so the way of keeping cannot be told from the luck of one jar. ${ends} A first look, worth repeating with two or more of each at every test.`,
        ),
        mark: cannot,
      };
    case 'not-shown':
      return {
        sentence: open(
          `that one kind keeps longer than another could not be shown; that is not proof that they keep alike. ${ends}`,
        ),
        mark: settled,
      };
    case 'apart':
    case 'slopes': {
      if (found.ceiling === 'cause-unclear') {
        const what = found.case === 'slopes' ? 'fell at different speed' : 'did not run along one line';
        return {
          sentence: open(`germination of the kinds ${what}, but ${reasons}. What caused it cannot be told. ${ends}`),
          mark: { words: 'cause unclear', shape: 'question' },
        };
      }
      const perhaps = probably ? 'probably ' : '';
      if (found.case === 'apart') {
        return {
          sentence: open(
            `germination of the kinds ${perhaps}does not run along one line. That one falls faster than another could not be shown.${because} ${ends}`,
          ),
          mark: { words: `${perhaps}apart, speed not settled`, shape: 'open' },
        };
      }
      const { slower, faster } = found;
      if (slower === null || faster === null) {
        return {
          sentence: open(`germination of the kinds ${perhaps}did not all fall at the same speed.${because} ${ends}`),
          mark: { words: `${perhaps}unlike in speed`, shape: 'open' },
        };
      }
      const isControl = trial.treatments.find(({ id }) => id === slower.treatment)?.control ?? false;
      return {
        sentence: open(
          `germination of ${labelled(trial, slower.treatment, 'seed')} ${perhaps}fell more slowly than that of ${labelled(trial, faster.treatment, 'seed')}.${because} ${ends}`,
        ),
        mark: { words: `${perhaps}fell ${isControl ? 'faster' : 'more slowly'}`, shape: isControl ? 'below' : 'above' },
      };
    }
  }
}

/** "After 5 years came up: Shed seed 41 of 100 (33 to 50) and Fridge seed 88 of 100 (81 to 93).": the last test of each. */
function atTheEnd(trial: Trial, result: Result, lot: string, { lines }: StorageCase): string {
  const last = lines.flatMap(({ treatment, tests }) => {
    const stored = tests.findLast(({ estimate }) => estimate !== null)?.stored;
    return result.groups.filter(
      (group) => group.lot === lot && group.treatment === treatment && group.stored === stored,
    );
  });
  const times = [...new Set(last.map(({ stored }) => stored ?? 0))];
  const one = (group: Group) => {
    const limits = group.interval === null ? '' : ` (${limit(group.interval.lower)} to ${limit(group.interval.upper)})`;
    const when = times.length === 1 ? '' : ` after ${storedText(group.stored ?? 0)}`;
    return `${labelled(trial, group.treatment, 'seed')} ${shareText({ estimate: group.estimate ?? 0 })}${limits}${when}`;
  };
  const after = times.length === 1 ? `After ${storedText(times[0] ?? 0)} came up` : 'At the last test came up';
  return `${after}: ${list(last.map(one))}.`;
}

const limit = (value: number | null): string => shareText({ estimate: value ?? 0 }).replace(' of 100', '');
