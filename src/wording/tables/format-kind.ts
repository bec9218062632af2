import type { FormatKey } from '../../trial/schema/format-keys.ts';
import type { Words } from '../words.ts';

/** What may stand under a key of the data format, in words: "a list of ids", "number, or a value for each name". */
export function formatKind(words: Words, { kinds, words: allowed }: FormatKey): string {
  const named = kinds.map(({ kind, list }) => {
    const what = words.say(`format.${list ? 'kinds' : 'kind'}.${kind}`, kind === 'word' ? { words: allowed.join(', ') } : {}); // prettier-ignore
    return list ? words.say('format.list', { what }) : what;
  });
  return named.reduce((one, other) => words.say('format.or', { one, other }));
}
