import { Unwritten } from './unwritten.ts';

/**
 * What `write` gives back.
 *
 * @param path that is told where the system refuses a step of it
 * @throws {Unwritten} in that case; anything else is thrown as it is
 */
export async function writing<T>(path: string, write: () => Promise<T>): Promise<T> {
  try {
    return await write();
  } catch (error) {
    const { code, syscall } = error as NodeJS.ErrnoException;
    if (typeof code !== 'string' || syscall === undefined) throw error;
    throw new Unwritten(path, code);
  }
}
