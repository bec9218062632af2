import { join, resolve } from 'node:path';
import type { HookParameters } from 'astro';
import { expect, test, vi } from 'vitest';
import { contentFolder } from '../../src/files/content-folder.ts';
import { renewedContent } from '../../src/files/renewed-content.ts';

/** What the hook needs of Astro: each refreshing waits until the test says how it ends. */
async function watched() {
  const ends: ((error?: Error) => void)[] = [];
  const contexts: unknown[] = [];
  const [errors, sent]: [string[], unknown[]] = [[], []];
  let listener: (event: string, path: string) => void = () => {};
  let connect: () => void = () => {};
  const refreshContent = ({ context }: { context?: unknown }) =>
    new Promise<void>((fulfil, reject) => {
      contexts.push(context);
      ends.push((error) => (error ? reject(error) : fulfil()));
    });
  await renewedContent().hooks['astro:server:setup']?.({
    server: {
      middlewares: { use: () => {} },
      watcher: { add: () => {}, on: (_: string, told: typeof listener) => (listener = told) },
      ws: {
        send: (message: unknown) => sent.push(message),
        on: (_: string, told: () => void) => (connect = told),
      },
    },
    refreshContent,
    logger: { error: (message: string) => errors.push(message) },
  } as unknown as HookParameters<'astro:server:setup'>);
  const change = (...path: string[]) => listener('change', join(...path));
  return { ends, contexts, errors, sent, change, connect: () => connect() };
}

test('what changes while the folder is read is read once more, and no oftener', async () => {
  const { ends, change } = await watched();
  change(contentFolder(), 'site.yaml');
  change(contentFolder(), 'lots.yaml');
  change(contentFolder(), 'people.yaml');
  expect(ends).toHaveLength(1);
  ends[0]?.();
  await vi.waitFor(() => expect(ends).toHaveLength(2));
  ends[1]?.();
  await new Promise((done) => setImmediate(done));
  expect(ends).toHaveLength(2);
});

test('files elsewhere do not matter, and changed code is read with the next change', async () => {
  const { ends, contexts, change } = await watched();
  change(resolve('README.md'));
  change(`${contentFolder()}-of-others`, 'site.yaml');
  change(resolve('src'), 'trial', 'trial.ts');
  expect(ends).toHaveLength(0);
  change(contentFolder(), 'site.yaml');
  ends[0]?.();
  await new Promise((done) => setImmediate(done));
  change(contentFolder(), 'site.yaml');
  expect(contexts).toEqual([{ isCodeChanged: true }, { isCodeChanged: false }]);
});

test('a mistake is said in terminal and page; mended, the page is loaded anew', async () => {
  const { ends, errors, sent, change, connect } = await watched();
  connect();
  change(contentFolder(), 'site.yaml');
  ends[0]?.(new Error('site.yaml:1:1 wrong'));
  await vi.waitFor(() => expect(errors).toEqual(['site.yaml:1:1 wrong']));
  const said = { type: 'error', err: { message: 'site.yaml:1:1 wrong', stack: '' } };
  expect(sent).toEqual([said]);
  connect(); // a page that is opened meanwhile
  expect(sent.splice(1)).toEqual([said]);
  change(contentFolder(), 'site.yaml');
  ends[1]?.();
  await vi.waitFor(() => expect(sent.slice(1)).toEqual([{ type: 'full-reload', path: '*' }]));
  change(contentFolder(), 'site.yaml');
  ends[2]?.();
  await new Promise((done) => setImmediate(done));
  connect();
  expect(sent).toHaveLength(2);
});

test('a text that changes has pages loaded anew, after a mistake at the next good reading', async () => {
  const { ends, sent, change } = await watched();
  const reload = { type: 'full-reload', path: '*' };
  const finished = () => new Promise((done) => setImmediate(done));
  change(contentFolder(), 'trials', 'leek', 'report.mdx');
  ends[0]?.();
  await finished();
  expect(sent.splice(0)).toEqual([reload]);
  change(contentFolder(), 'trials', 'leek', 'report.md');
  ends[1]?.(new Error('report.md:1:1 wrong'));
  await finished();
  expect(sent.splice(0)).toEqual([{ type: 'error', err: { message: 'report.md:1:1 wrong', stack: '' } }]);
  change(contentFolder(), 'trials', 'leek', 'report.md');
  ends[2]?.();
  await finished();
  change(contentFolder(), 'site.yaml');
  ends[3]?.();
  await finished();
  expect(sent).toEqual([reload]);
});
