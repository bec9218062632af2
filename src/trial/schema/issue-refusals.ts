import * as z from 'zod';
import type { Refusal } from '../refusal.ts';
import { didYouMean } from '../text/did-you-mean.ts';
import { nearest } from '../text/nearest.ts';
import { shown } from '../text/shown.ts';
import { schemaAt } from './schema-at.ts';
import { unwrap } from './unwrap.ts';

// Under a strict content policy zod must not compile schemas at run time.
z.config({ jitless: true });

/** A refusal and the path of keys and indices to what was refused. */
export interface PathRefusal {
  readonly path: readonly PropertyKey[];
  readonly refusal: Refusal;
}

type Issue = z.core.$ZodIssue;

/**
 * An issue of zod in a grower's words; several where it stands for several mistakes. Issues raised by
 * our own fields carry their words already. Needs `reportInput: true`.
 */
export function issueRefusals(issue: Issue, schema: z.core.$ZodType): PathRefusal[] {
  const { path } = issue;
  const one = (rule: string, message: string, remedy: string) => [{ path, refusal: { rule, message, remedy } }];
  const description = z.globalRegistry.get(schemaAt(schema, path) as z.ZodType)?.description;

  switch (issue.code) {
    case 'custom':
      return one(String(issue.params?.rule), issue.message, String(issue.params?.remedy));
    case 'unrecognized_keys':
      return issue.keys.map((key) => unknownKey(key, path, schema));
    case 'invalid_value': {
      if (isAbsent(issue.input)) return one('missing', 'is missing', needed(path, description));
      const allowed = issue.values.map(String).filter((value) => value !== 'true' && value !== 'false');
      const found = typeof issue.input === 'string' ? shown(issue.input) : kindOf(issue.input);
      const close = nearest(String(issue.input), allowed);
      const remedy = close === null ? 'Write one of these words as it stands here.' : `Did you mean ${shown(close)}?`;
      return one('unknown-word', `expected one of ${allowed.join(', ')}; found ${found}`, remedy);
    }
    case 'invalid_type': {
      if (isAbsent(issue.input)) return one('missing', 'is missing', needed(path, description));
      const [expected, remedy] = SHAPES[issue.expected] ?? SHAPES.string;
      return one('wrong-shape', `expected ${expected}; found ${kindOf(issue.input)}`, remedy);
    }
    case 'too_small':
      return one('missing', 'is empty', needed(path, description));
    case 'too_big':
      return one(
        'too-long',
        `has more than ${issue.maximum} ${issue.origin === 'array' ? 'entries' : 'characters'}`,
        'Shorten it.',
      );
    case 'invalid_union':
      return bestBranch(issue).flatMap((inner) => issueRefusals({ ...inner, path: [...path, ...inner.path] }, schema));
    case 'invalid_key':
      return issue.issues.flatMap((inner) => issueRefusals({ ...inner, path: [...path, ...inner.path] }, schema));
    default:
      return one('not-allowed', issue.message, 'See the description of the data format.');
  }
}

const SHAPES: Readonly<Record<string, readonly [expected: string, remedy: string]>> & {
  readonly string: readonly [string, string];
} = {
  object: ['keys with values, such as "name: Mara"', 'Write one "key: value" a line, indented below it.'],
  record: ['keys with values, such as "leek-2025: 14"', 'Write one "key: value" a line, indented below it.'],
  array: ['a list, such as [first, second]', 'Put it into square brackets, or write one "- entry" a line.'],
  string: ['one text or number', 'Write a single value; quote it where it holds a colon or begins with a sign.'],
};

const isAbsent = (value: unknown) => value === undefined || value === null;

function kindOf(value: unknown): string {
  if (Array.isArray(value)) return 'a list';
  return typeof value === 'object' ? 'keys with values' : shown(String(value));
}

function needed(path: readonly PropertyKey[], description: string | undefined): string {
  const what = description === undefined ? '' : ` (${description.replace(/\.$/, '')})`;
  return typeof path.at(-1) === 'string' ? `Give a value for ${String(path.at(-1))}${what}.` : `Give a value${what}.`;
}

function unknownKey(key: string, path: readonly PropertyKey[], schema: z.core.$ZodType): PathRefusal {
  const parent = schemaAt(schema, path);
  const inner = parent && unwrap(parent);
  const options = inner instanceof z.ZodUnion ? inner.options : [inner];
  const object = options.find((option) => option instanceof z.ZodObject);
  const known = Object.keys(object?.shape ?? {});
  return {
    path: [...path, key],
    refusal: { rule: 'unknown-key', message: `unknown key ${shown(key)}`, remedy: didYouMean(key, known, 'key') },
  };
}

/** The branch of a union that the author seems to have meant: one that fails inside rather than at its shape. */
function bestBranch({ errors }: z.core.$ZodIssueInvalidUnion): readonly Issue[] {
  const inside = errors.find((issues) => issues.every(({ code, path }) => code !== 'invalid_type' || path.length > 0));
  return inside ?? errors[0] ?? [];
}
