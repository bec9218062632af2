import { enableCompileCache } from 'node:module';
import { resolve } from 'node:path';
import { KEPT_IN } from '../files/kept/build-keeper.ts';

/**
 * Keeps what Node makes of the code it loads from now on, beside what builds keep: a command then starts in half the time.
 * Node finds it by the digest of the code, so nothing stale is run; where it cannot be written, nothing is kept.
 */
export function keepCompiled(): void {
  enableCompileCache(resolve(KEPT_IN, 'compiled'));
}
