import { availableParallelism } from 'node:os';
import { resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { Piscina } from 'piscina';

let threads: Piscina | undefined;

/** Threads that set what is printed while the pages are written: one less than the machine has room for. */
export function printingThreads(): Piscina {
  threads ??= new Piscina({
    filename: pathToFileURL(resolve('src/files/printing-thread.ts')).href,
    minThreads: 1,
    maxThreads: Math.max(1, availableParallelism() - 1),
    idleTimeout: 1000,
    atomics: 'disabled', // between two tasks Node must get to free what the typesetter no longer holds
  });
  return threads;
}
