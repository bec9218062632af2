import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';

/** One TrueType file. */
export interface Face {
  readonly family: string;
  readonly path: string;
  readonly bytes: Buffer;
}

const FILES: readonly (readonly [family: string, file: string])[] = [
  ['Source Serif 4', 'source-serif-4/400Regular/SourceSerif4_400Regular.ttf'],
  ['Source Serif 4', 'source-serif-4/400Regular_Italic/SourceSerif4_400Regular_Italic.ttf'],
  ['Source Serif 4', 'source-serif-4/600SemiBold/SourceSerif4_600SemiBold.ttf'],
  ['Atkinson Hyperlegible Next', 'atkinson-hyperlegible-next/400Regular/AtkinsonHyperlegibleNext_400Regular.ttf'],
  ['Atkinson Hyperlegible Next', 'atkinson-hyperlegible-next/700Bold/AtkinsonHyperlegibleNext_700Bold.ttf'],
  ['Noto Sans Hebrew', 'noto-sans-hebrew/400Regular/NotoSansHebrew_400Regular.ttf'],
  ['Noto Sans Arabic', 'noto-sans-arabic/400Regular/NotoSansArabic_400Regular.ttf'],
];

let read: readonly Face[] | undefined;

/** The faces of everything printed: those of the site, and one each for Hebrew and Arabic. Read once. */
export function faces(): readonly Face[] {
  const { resolve } = createRequire(import.meta.url);
  read ??= FILES.map(([family, file]) => {
    const path = resolve(`@expo-google-fonts/${file}`);
    return { family, path, bytes: readFileSync(path) };
  });
  return read;
}
