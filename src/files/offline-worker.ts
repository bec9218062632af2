/** What a service worker is given, as far as it is used here. */
export interface WorkerScope {
  readonly location: { readonly href: string };
  readonly caches: CacheStorage;
  readonly clients: { claim(): Promise<void> };
  skipWaiting(): Promise<void>;
  fetch(request: Request): Promise<Response>;
  addEventListener(type: string, listener: (event: WorkerEvent) => void): void;
}
export interface WorkerEvent {
  readonly request: Request;
  waitUntil(work: Promise<unknown>): void;
  respondWith(answer: Promise<Response>): void;
}

/**
 * The whole service worker of one page; its text is what is published, so it uses nothing from outside itself. It keeps
 * the files listed and answers for nothing else: every other request goes its usual way.
 *
 * @param files addresses of the page and its assets; the page first
 * @param version digest of these files: another one, another cache
 */
export function offlineWorker(scope: WorkerScope, files: readonly string[], version: string): void {
  const own = `offline ${files[0]} `;
  const name = own + version;
  scope.addEventListener('install', (event) => {
    const fetched = files.map((file) => new Request(file, { cache: 'reload' }));
    event.waitUntil(scope.caches.open(name).then((cache) => cache.addAll(fetched)).then(() => scope.skipWaiting())); // prettier-ignore
  });
  scope.addEventListener('activate', (event) => {
    const tidied = scope.caches
      .keys()
      .then((names) => Promise.all(names.filter((each) => each.startsWith(own) && each !== name).map((each) => scope.caches.delete(each)))); // prettier-ignore
    event.waitUntil(tidied.then(() => scope.clients.claim()));
  });
  scope.addEventListener('fetch', (event) => {
    const { method, url } = event.request;
    const { origin, pathname } = new URL(url);
    if (method !== 'GET' || origin !== new URL(scope.location.href).origin || !files.includes(pathname)) return;
    const kept = scope.caches.open(name).then((cache) => cache.match(pathname));
    event.respondWith(kept.then((response) => response ?? scope.fetch(event.request)));
  });
}
