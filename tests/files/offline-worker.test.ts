import { expect, test } from 'vitest';
import { offlineWorker, type WorkerEvent, type WorkerScope } from '../../src/files/offline-worker.ts';

/** A browser's part, with a cache that holds what is put into it. */
function started(names: readonly string[]) {
  const listeners = new Map<string, (event: WorkerEvent) => void>();
  const deleted: string[] = [];
  const cache = { addAll: async () => undefined, match: async (path: string) => new Response(path) };
  const caches = {
    keys: async () => names,
    open: async () => cache,
    delete: async (name: string) => deleted.push(name),
  };
  const scope = {
    location: { href: 'https://example.org/garden/record/worker.js' },
    caches,
    clients: { claim: async () => undefined },
    skipWaiting: async () => undefined,
    fetch: async () => new Response('network'),
    addEventListener: (type: string, listener: (event: WorkerEvent) => void) => listeners.set(type, listener),
  } as unknown as WorkerScope;
  offlineWorker(scope, ['/garden/record/', '/garden/_astro/a.js'], 'two');
  return { listeners, deleted };
}

async function answer(url: string, method = 'GET'): Promise<string | null> {
  let given: Promise<Response> | null = null;
  const event = { request: new Request(url, { method }), waitUntil: () => undefined, respondWith: (response: Promise<Response>) => (given = response) }; // prettier-ignore
  started([]).listeners.get('fetch')?.(event as unknown as WorkerEvent);
  return given === null ? null : (await (given as Promise<Response>)).text();
}

test('the worker answers for the page, whatever trial its address names, and for its assets', async () => {
  expect(await answer('https://example.org/garden/record/?trial=leek')).toBe('/garden/record/');
  expect(await answer('https://example.org/garden/_astro/a.js')).toBe('/garden/_astro/a.js');
});

test.each([
  ['https://example.org/garden/trials/', 'GET'],
  ['https://example.org/garden/record/trials/leek.json', 'GET'],
  ['https://elsewhere.org/garden/record/', 'GET'],
  ['https://example.org/garden/record/', 'POST'],
])('it leaves %s (%s) alone', async (url, method) => expect(await answer(url, method)).toBe(null));

test('it deletes older caches of this page and no others', async () => {
  const old = ['offline /garden/record/ one', 'offline /garden/record/ two', 'offline /other/record/ one', 'search'];
  const { listeners, deleted } = started(old);
  let work: Promise<unknown> = Promise.resolve();
  listeners.get('activate')?.({ waitUntil: (each: Promise<unknown>) => (work = each) } as unknown as WorkerEvent);
  await work;
  expect(deleted).toEqual(['offline /garden/record/ one']);
});
