import { createHash } from 'node:crypto';
import { globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

/**
 * Digest of everything that makes what is kept between builds: our code, the versions of all packages that are installed,
 * the faces of print, and Node. A change of any of them makes everything anew.
 *
 * @param root folder of the project
 * @returns SHA-256, hexadecimal
 */
export function makerDigest(root: string): string {
  const hash = createHash('sha256').update(process.version);
  const files = [
    ...globSync('src/**/*', { cwd: root, withFileTypes: false }).filter((file) => /\.\w+$/.test(file)),
    'astro.config.mjs',
    'package-lock.json',
    'node_modules/.package-lock.json',
    ...globSync('node_modules/@expo-google-fonts/*/**/*.ttf', { cwd: root }),
  ];
  for (const file of files.toSorted()) hash.update(`\n${file}\n`).update(bytesOf(join(root, file)));
  return hash.digest('hex');
}

/** A folder with a dot in its name, and a file that is not there, count as nothing. */
function bytesOf(path: string): Uint8Array {
  try {
    return readFileSync(path);
  } catch {
    return new Uint8Array();
  }
}
