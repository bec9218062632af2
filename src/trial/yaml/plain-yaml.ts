import { isAlias, isMap, isScalar, isSeq, type Document, type Node } from 'yaml';
import type { Refusal } from '../refusal.ts';
import { invisibleSign } from '../text/invisible-sign.ts';
import { fieldName } from './field-name.ts';

/** What no file of ours needs: nesting or aliases without end, keys that are lists or stand twice, tags. */
export type YamlRefused = 'depth' | 'aliases' | 'key' | 'twice' | 'tag';

const MOST_ALIASES = 100;
const MOST_REPEATED = 10_000; // values that aliases write again
const DEEPEST = 20;
const MOST_REFUSED = 20; // of one file: the rest would be more of the same

/** What stands in a YAML file, every value as the text that was written; empty values are left out. */
export interface PlainYaml {
  readonly value: unknown;
  /** Offset of each key and list entry, by path (`outcomes[0].day`). */
  readonly offsets: ReadonlyMap<string, number>;
  readonly refused: readonly { readonly offset: number; readonly what: YamlRefused | Refusal }[];
}

/**
 * Turns a parsed document into plain values. Values stay text, so that id 007, cultivar 1.10 and
 * accession 1e5 stay what they are; the schema decides what is a number.
 */
export function plainYaml(document: Document): PlainYaml {
  const offsets = new Map<string, number>();
  const refused: { offset: number; what: YamlRefused | Refusal }[] = [];
  let [aliases, repeated, repeating] = [0, 0, false];

  function plain(node: unknown, path: readonly PropertyKey[]): unknown {
    if (isAlias(node)) {
      aliases++;
      const target = aliases > MOST_ALIASES || repeated > MOST_REPEATED ? undefined : node.resolve(document);
      if (target === undefined || path.length > DEEPEST) return refuse(node, 'aliases');
      const within = repeating;
      repeating = true;
      const value = plain(target, path);
      repeating = within;
      return repeated > MOST_REPEATED && !within ? refuse(node, 'aliases') : value;
    }
    if (repeating && ++repeated > MOST_REPEATED) return undefined;
    if (isScalar(node) && node.tag !== undefined) return refuse(node, 'tag');
    if (isScalar(node))
      return typeof node.value === 'string' && node.value.trim() !== '' ? seen(node, node.value) : undefined;
    if (path.length > DEEPEST) return refuse(node as Node, 'depth');
    if (isSeq(node)) {
      return node.items.map((item, index) => {
        locate([...path, index], item);
        return plain(item, [...path, index]) ?? '';
      });
    }
    if (!isMap(node)) return undefined;
    const names = new Set<string>();
    return Object.fromEntries(
      node.items.flatMap(({ key, value }) => {
        if (!isScalar(key)) return refuse(key as Node, 'key') ?? [];
        const name = String(key.value);
        if (names.has(name)) return refuse(key, 'twice') ?? [];
        names.add(seen(key, name));
        locate([...path, name], key);
        const plainValue = plain(value, [...path, name]);
        return plainValue === undefined ? [] : [[name, plainValue]];
      }),
    );
  }

  /** An invisible sign can be written with signs that are seen, as "\\e" in quotes. */
  function seen(node: Node, text: string): string {
    const found = invisibleSign(text);
    if (found) refuse(node, found.refusal);
    return text;
  }

  function locate(path: readonly PropertyKey[], node: unknown): void {
    const offset = (node as Node | null)?.range?.[0];
    const name = fieldName(path);
    if (offset !== undefined && name !== null) offsets.set(name, offset);
  }

  function refuse(node: Node | null, what: YamlRefused | Refusal): undefined {
    if (refused.length < MOST_REFUSED) refused.push({ offset: node?.range?.[0] ?? 0, what });
  }

  return { value: plain(document.contents, []), offsets, refused };
}
