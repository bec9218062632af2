/** What the page hands to its script. */
export interface Told {
  readonly language: string;
  /** Of the folder with the files, a slash at its end. */
  readonly address: string;
  /** Names of the files in it, all but the zip that holds the others. */
  readonly files: readonly string[];
  /** Texts of the page by key, without `recheck.`. */
  readonly texts: Readonly<Record<string, string>>;
}
