import * as z from 'zod';

/** What a value is, as the data-format page names it. */
export type ValueKind = 'text' | 'id' | 'date' | 'link' | 'number' | 'whole' | 'switch' | 'word' | 'keys' | 'by-name';

/** One key of a YAML file or one column of a table. */
export interface FormatKey {
  /** `outcomes[].day`; `<id>.crop`, `<name>.alt` where the author gives the key. */
  readonly path: string;
  readonly required: boolean;
  /** Several where either will do; `list`: several of them in a list. */
  readonly kinds: readonly { readonly kind: ValueKind; readonly list: boolean }[];
  /** The words allowed, where only these are. */
  readonly words: readonly string[];
  readonly description: string;
}

interface Node {
  readonly type?: string | readonly string[];
  readonly format?: string;
  readonly pattern?: string;
  readonly enum?: readonly unknown[];
  readonly description?: string;
  readonly anyOf?: readonly Node[];
  readonly items?: Node;
  readonly propertyNames?: Node;
  readonly properties?: Readonly<Record<string, Node>>;
  readonly required?: readonly string[];
  readonly additionalProperties?: Node | boolean;
}

/** The keys that a schema knows, those inside others after them, told from the schema itself. */
export function formatKeys(schema: z.ZodType): readonly FormatKey[] {
  return keysOf(z.toJSONSchema(schema, { io: 'input', target: 'draft-7' }) as Node, '');
}

function keysOf(node: Node, path: string): FormatKey[] {
  const { properties = {}, required = [], additionalProperties, propertyNames, items, anyOf = [] } = node;
  const name = propertyNames?.pattern === undefined ? '<name>' : '<id>';
  const inside = Object.entries(properties).flatMap(([key, value]) => {
    const at = path === '' ? key : `${path}.${key}`;
    return [keyOf(value, at, required.includes(key)), ...keysOf(value, at)];
  });
  return [
    ...inside,
    ...(items ? keysOf(items, `${path}[]`) : []),
    ...(typeof additionalProperties === 'object'
      ? keysOf(additionalProperties, path === '' ? name : `${path}.${name}`)
      : []),
    ...anyOf.flatMap((option) => keysOf(option, path)),
  ];
}

function keyOf(node: Node, path: string, required: boolean): FormatKey {
  const options = variants(node);
  return {
    path,
    required,
    kinds: options.map((option) => ({ kind: kindOf(option.items ?? option), list: option.items !== undefined })),
    words: options.flatMap((option) => wordsOf(option.items ?? option)),
    description: node.description ?? '',
  };
}

/** What may stand here, one by one; an empty value, which every optional cell of a table may hold, is none. */
function variants(node: Node): Node[] {
  const options = (node.anyOf ?? [node]).filter(({ type }) => type !== 'null');
  return options.flatMap(({ items: each, ...list }) =>
    (each?.anyOf ?? [each]).map((item) => ({ ...list, ...(item && { items: item }) })),
  );
}

function kindOf({ type, format, pattern, enum: words, properties, additionalProperties }: Node): ValueKind {
  if (words) return isSwitch(words) ? 'switch' : 'word';
  if (properties) return 'keys';
  if (additionalProperties !== undefined) return 'by-name';
  const types = [type].flat();
  if (!types.includes('string') && types.includes('number')) return 'number';
  if (!types.includes('string') && types.includes('integer')) return 'whole';
  if (format === 'date' || format === 'uri') return format === 'date' ? 'date' : 'link';
  return pattern === undefined ? 'text' : 'id';
}

const isSwitch = (words: readonly unknown[]) => words.every((word) => ['yes', 'no', true, false].includes(word as never)); // prettier-ignore
const wordsOf = ({ enum: words = [] }: Node): string[] =>
  isSwitch(words) ? [] : words.filter((word) => typeof word === 'string');
