import { isMainThread } from 'node:worker_threads';
import * as makers from './printing-thread.ts';
import { printingThreads } from './printing-threads.ts';

type Makers = typeof makers;
type Made<Name extends keyof Makers> = Promise<Awaited<ReturnType<Makers[Name]>>>;

/** What a function of printing-thread.ts makes: here where pages are made in threads of their own, else in one beside. */
export async function printed<Name extends keyof Makers>(name: Name, order: Parameters<Makers[Name]>[0]): Made<Name> {
  if (isMainThread) return printingThreads().run(order, { name });
  return (makers[name] as (order: unknown) => Made<Name>)(order);
}
