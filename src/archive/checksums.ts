/** A file with its name within the data folder. */
export interface NamedDigest {
  readonly name: string;
  /** Lower-case hexadecimal. */
  readonly sha256: string;
}

/** SHA256SUMS as `sha256sum -c` reads it: digest, two blanks, name. */
export function checksums(files: readonly NamedDigest[]): string {
  return files.map(({ name, sha256 }) => `${sha256}  ${name}\n`).join('');
}
