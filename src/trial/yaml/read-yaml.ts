import { LineCounter, parseDocument, type Document } from 'yaml';
import { WHOLE_FILE, type FileProblems, type Place } from '../file-problems.ts';
import { decodeText } from '../text/decode-text.ts';
import { refuseInvisible } from '../text/refuse-invisible.ts';
import { fieldName } from './field-name.ts';
import type { Refusal } from '../refusal.ts';
import { plainYaml, type PlainYaml, type YamlRefused } from './plain-yaml.ts';
import { openedAt } from './opened-at.ts';
import { yamlMistake } from './yaml-mistake.ts';

export interface YamlFile {
  /** Objects, lists and text; every value as it was written. An empty file is an empty object. */
  readonly value: unknown;
  readonly text: string;
  readonly encoding: string;
  /** Place of a key or list entry, else of the nearest thing around it. */
  place(path: readonly PropertyKey[]): Place;
}

/**
 * A YAML file as text values with places. Every mistake is reported; null where it cannot be read.
 *
 * @param most bytes that it may have
 */
export function readYaml(bytes: Uint8Array, report: FileProblems, most = MOST_BYTES): YamlFile | null {
  const decoded = decodeText(bytes);
  if ('rule' in decoded) {
    report.error(WHOLE_FILE, decoded);
    return null;
  }
  if (bytes.length > most) {
    report.error(WHOLE_FILE, {
      rule: 'file-too-large',
      message: `the file is larger than ${most / 1000} kB, more than a file of this kind needs`,
      remedy: 'Keep only what belongs to it; long tables belong into CSV files.',
    });
    return null;
  }
  const { text, encoding } = decoded;
  refuseInvisible(text, report);
  if (report.hasErrors) return null;

  const counter = new LineCounter();
  const at = (offset: number): Place => {
    const { line, col } = counter.linePos(Math.min(offset, Math.max(0, text.trimEnd().length - 1)));
    return { line: Math.max(line, 1), column: Math.max(col, 1), cell: null, field: null };
  };
  const document = parse(text, counter);
  const plain = document && plainYaml(document);
  if (!document || !plain || document.errors.some(({ code }) => code === 'RESOURCE_EXHAUSTION')) {
    report.error(WHOLE_FILE, NOT_NEEDED.depth);
    return null;
  }
  const mistakes = [...document.errors, ...document.warnings].slice(0, MOST_MISTAKES);
  const lines = new Set<number | null>(); // one mistake a line: more are mostly its consequences
  for (const { pos, code, message } of mistakes) {
    const { line } = at(pos[0]);
    if (!lines.has(line)) report.error(at(openedAt(document, pos[0])), yamlMistake(code, message));
    lines.add(line);
  }
  for (const { offset, what } of mistakes.length > 0 ? [] : plain.refused) {
    report.error(at(offset), typeof what === 'string' ? NOT_NEEDED[what] : what);
  }
  if (report.hasErrors) return null;

  return { value: plain.value ?? {}, text, encoding, place: placeIn(plain, at) };
}

/** Of a file that a contributor sends: the parser takes up to a thousand times as much memory. */
const MOST_BYTES = 500_000;
/** Of a file that the publisher keeps, which grows with the trials. */
export const MOST_BYTES_OF_SITE = 5_000_000;
/** Mistakes named of one file: a broken bracket can make thousands. */
const MOST_MISTAKES = 20;

const NOT_NEEDED: Readonly<Record<YamlRefused, Refusal>> = {
  depth: {
    rule: 'yaml',
    message: 'lists and keys are nested too deeply',
    remedy: 'Compare with the example in the description of the data format.',
  },
  aliases: {
    rule: 'yaml',
    message: 'an alias (*) leads nowhere, into itself, is one of more than 100, or repeats too much',
    remedy: 'Write the text out, or put it into double quotes where it begins with a star.',
  },
  twice: {
    rule: 'yaml',
    message: 'the same key stands twice',
    remedy: 'Keep one of the two.',
  },
  tag: {
    rule: 'yaml',
    message: 'a tag beginning with "!" stands here',
    remedy: 'Put the value into double quotes.',
  },
  key: {
    rule: 'yaml',
    message: 'a key is a list or holds keys itself',
    remedy: 'Write keys as plain words; put a text with brackets into double quotes.',
  },
};

/** Null where the text is nested deeper than the parser can follow. */
function parse(text: string, lineCounter: LineCounter): Document | null {
  try {
    return parseDocument(text, {
      schema: 'failsafe',
      uniqueKeys: false, // looked for below: the parser compares each key with all others
      lineCounter,
      prettyErrors: false,
      logLevel: 'silent',
    });
  } catch (error) {
    if (error instanceof RangeError) return null;
    throw error;
  }
}

function placeIn({ offsets }: PlainYaml, at: (offset: number) => Place): YamlFile['place'] {
  return (path) => {
    for (let length = path.length; length > 0; length--) {
      const offset = offsets.get(fieldName(path.slice(0, length)) ?? '');
      if (offset !== undefined) return { ...at(offset), field: fieldName(path) };
    }
    return { ...at(0), field: fieldName(path) };
  };
}
