/**
 * A disk that fails, or a machine that loses its power, at one step of writing. Preloaded with `--import` it takes what is
 * to happen from FAILING_DISK, such as `4 KILL` or `4 ENOSPC`.
 */
import fs from 'node:fs';
import { syncBuiltinESMExports } from 'node:module';

type Step = (...args: never[]) => Promise<unknown>;

const disk = fs.promises as unknown as Record<string, Step>;
const real = { ...disk };
const handle = await fs.promises.open(import.meta.filename);
const file = Object.getPrototypeOf(handle) as Record<'writeFile' | 'sync', Step>;
await handle.close();
const ofFile = { writeFile: file.writeFile, sync: file.sync };

/** Steps that a full disk lets pass. */
const FREEING = ['unlink', 'rm'];
const STEPS = ['mkdir', 'mkdtemp', 'link', 'rename', 'writeFile', 'cp', 'copyFile', 'symlink', ...FREEING];

/**
 * Counts steps of writing from now on. At step `at` half of what is to be written is written; with KILL the process ends
 * there, with a code of the system the step fails and every later one that needs room.
 *
 * @param at counted from 1
 * @returns how many steps were taken, and an end to it
 */
export function failingDisk(at: number, how: string): { taken(): number; mend(): void } {
  let taken = 0;
  const step = (name: string, partly = () => {}) => {
    taken += 1;
    if (taken < at || (how !== 'KILL' && FREEING.includes(name))) return;
    partly();
    if (how === 'KILL') process.kill(process.pid, 'SIGKILL');
    throw Object.assign(new Error(`${how}: no, ${name}`), { code: how, syscall: name });
  };
  const after = (name: string, partly?: (args: readonly unknown[]) => void): Step =>
    async function (...args) {
      step(name, () => partly?.(args));
      return real[name]?.(...args);
    };

  for (const name of STEPS) disk[name] = after(name);
  disk.writeFile = after('writeFile', ([path, bytes]) => fs.writeFileSync(path as string, half(bytes as string)));
  disk.open = async (...args: never[]) => {
    if (![undefined, 'r'].includes(args[1])) step('open');
    return real.open?.(...args);
  };
  file.writeFile = async function (this: { readonly fd: number }, ...args: never[]) {
    step('write', () => fs.writeSync(this.fd, half(args[0] as never)));
    return ofFile.writeFile.call(this, ...args);
  };
  file.sync = async function (this: unknown) {
    step('fsync');
    return ofFile.sync.call(this);
  };
  syncBuiltinESMExports();
  return {
    taken: () => taken,
    mend: () => {
      Object.assign(disk, real);
      Object.assign(file, ofFile);
      syncBuiltinESMExports();
    },
  };
}

const half = (content: string | Uint8Array): Uint8Array =>
  Buffer.from(content as Uint8Array).subarray(0, content.length >> 1);

if (process.env.FAILING_DISK) {
  const [at, how = ''] = process.env.FAILING_DISK.split(' ');
  failingDisk(Number(at), how);
}
