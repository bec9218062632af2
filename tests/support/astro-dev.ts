import { spawn } from 'node:child_process';
import { createServer, type AddressInfo } from 'node:net';
import { join } from 'node:path';

const root = join(import.meta.dirname, '..', '..');

/** `astro dev` while it runs. */
export interface AstroDev {
  /** With a slash at the end, without a base path. */
  readonly address: string;
  /** What it has printed so far. */
  output(): string;
  stop(): Promise<void>;
}

/** `astro dev` of a content folder, ready to answer, on a port of its own. */
export async function astroDev(content: string): Promise<AstroDev> {
  const port = await freePort();
  const environment = Object.entries(process.env).filter(
    ([name]) => !/^(BASE_URL|MODE|DEV|PROD|SSR|NODE_ENV|TEST|VITEST.*)$/.test(name), // the test runner's own
  );
  const server = spawn(
    process.execPath,
    [join(root, 'node_modules', 'astro', 'bin', 'astro.mjs'), 'dev', '--port', String(port), '--ignore-lock'],
    {
      cwd: root,
      env: { ...Object.fromEntries(environment), FAIRSOWN_CONTENT: content, NO_COLOR: '1', FORCE_COLOR: '0' },
      stdio: ['ignore', 'pipe', 'pipe'],
    },
  );
  let output = '';
  const over = new Promise<void>((resolve) => server.once('exit', () => resolve()));
  server.stdout.on('data', (text) => (output += text));
  server.stderr.on('data', (text) => (output += text));
  while (!output.includes('watching for file changes')) {
    if (server.exitCode !== null) throw new Error(`astro dev stopped:\n${output}`);
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
  return {
    address: `http://localhost:${port}/`,
    output: () => output,
    stop: () => (server.kill(), over),
  };
}

function freePort(): Promise<number> {
  return new Promise((resolve) => {
    const server = createServer().listen(0, () => {
      const { port } = server.address() as AddressInfo;
      server.close(() => resolve(port));
    });
  });
}
