import { Readable } from 'node:stream';

/** As many as keep all cores busy: what each of a thousand trials takes to be made must not be held at once. */
const AT_ONCE = 8;

/** What `make` makes of each item, in their order, a few being made at a time. */
export const fewAtOnce = <Item, Made>(items: readonly Item[], make: (item: Item) => Promise<Made>): Promise<Made[]> =>
  Readable.from(items).map(make, { concurrency: AT_ONCE }).toArray();
