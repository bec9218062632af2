import { spawnSync } from 'node:child_process';
import { globSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { extname, join } from 'node:path';
import { gzipSync } from 'node:zlib';
import type { TestProject } from 'vitest/node';

const root = join(import.meta.dirname, '..', '..');

export interface BuiltSite {
  /** Folder of the built files. */
  readonly folder: string;
  /** Where the site is served, with its base path and a slash at the end. */
  readonly address: string;
  /** Its base path: `/` or `/garden/`. */
  readonly base: string;
  /** Paths below the base: `''`, `trials/`, `404.html` … */
  readonly pages: readonly string[];
}

declare module 'vitest' {
  export interface ProvidedContext {
    site: BuiltSite;
  }
}

/** The machine's environment without what the test runner puts into it: Astro would take BASE_URL and NODE_ENV for its own. */
const environment = Object.fromEntries(
  Object.entries(process.env).filter(([name]) => !/^(BASE_URL|MODE|DEV|PROD|SSR|NODE_ENV|TEST|VITEST.*)$/.test(name)),
);

/**
 * `npm run build` of a content folder into `outDir`: what it printed, and its exit code.
 *
 * @param set further environment variables
 * @param options of the command
 */
export function astroBuild(
  outDir: string,
  content = join(root, 'content'),
  set: Readonly<Record<string, string>> = {},
  options: readonly string[] = [],
): { status: number | null; output: string } {
  const { status, stdout, stderr } = spawnSync(
    process.execPath,
    [join(root, 'src/commands/build.ts'), '--outDir', outDir, ...options],
    {
      cwd: root,
      encoding: 'utf8',
      env: {
        ...environment,
        ...set,
        FAIRSOWN_CONTENT: content,
        ASTRO_TELEMETRY_DISABLED: '1',
        NO_COLOR: '1',
        FORCE_COLOR: '0',
      },
    },
  );
  return { status, output: stdout + stderr };
}

/** Before all tests of the site: builds it once into a temporary folder and serves it as a host would. */
export async function setup(project: TestProject): Promise<() => Promise<void>> {
  const folder = mkdtempSync(join(tmpdir(), 'fairsown-site-'));
  const { status, output } = astroBuild(folder);
  if (status !== 0) throw new Error(`astro build failed:\n${output}`);

  const canonical = /rel="canonical" href="([^"]+)"/.exec(readFileSync(join(folder, 'index.html'), 'utf8'))?.[1] ?? '';
  const base = new URL(canonical).pathname;
  const { port, close } = await serve(folder, base);
  const pages = globSync('**/*.html', { cwd: folder })
    .map((file) => file.replaceAll('\\', '/').replace(/index\.html$/, ''))
    .sort();
  project.provide('site', { folder, address: `http://localhost:${port}${base}`, base, pages });
  return async () => {
    await close();
    rmSync(folder, { recursive: true, force: true });
  };
}

const TYPES: Readonly<Record<string, string>> = {
  '.css': 'text/css',
  '.csv': 'text/csv',
  '.avif': 'image/avif',
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript',
  '.json': 'application/json',
  '.pdf': 'application/pdf',
  '.png': 'image/png',
  '.svg': 'image/svg+xml',
  '.txt': 'text/plain; charset=utf-8',
  '.webp': 'image/webp',
  '.woff2': 'font/woff2',
  '.xml': 'application/xml',
};

/** Serves built files below a base path as a host does, texts compressed, on a port of its own. */
export async function serve(folder: string, base: string): Promise<{ port: number; close(): Promise<void> }> {
  const read = (path: string) => {
    try {
      return readFileSync(join(folder, path.endsWith('/') || path === '' ? `${path}index.html` : path));
    } catch {
      return null;
    }
  };
  const packed = new Map<string, Buffer>();
  const packedOf = (path: string, body: Buffer) => {
    const known = packed.get(path) ?? gzipSync(body);
    packed.set(path, known);
    return known;
  };
  const server = createServer(({ url = '/', headers }, response) => {
    const path = decodeURIComponent(new URL(url, 'http://localhost').pathname);
    const body = path.startsWith(base) && !path.includes('..') ? read(path.slice(base.length)) : null;
    const type = TYPES[extname(path) || '.html'] ?? 'application/octet-stream';
    const head = { 'content-type': body ? type : TYPES['.html'] };
    if (body && /text|json|xml|svg/.test(type) && /gzip/.test(`${headers['accept-encoding']}`)) {
      response.writeHead(200, { ...head, 'content-encoding': 'gzip', vary: 'accept-encoding' });
      response.end(packedOf(path, body));
      return;
    }
    response.writeHead(body ? 200 : 404, head);
    response.end(body ?? read('404.html'));
  });
  await new Promise<void>((resolve) => server.listen(0, resolve));
  return {
    port: (server.address() as AddressInfo).port,
    close: () => new Promise((resolve) => server.close(() => resolve())),
  };
}
