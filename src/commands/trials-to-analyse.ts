import { readdir } from 'node:fs/promises';
import { dirname, join, resolve } from 'node:path';
import { readContent } from '../files/read-content.ts';
import { readSiteFolder } from '../files/read-site-folder.ts';
import { readTrialFolder, type TrialFolder } from '../files/read-trial-folder.ts';
import type { Problem } from '../trial/problem.ts';
import { didYouMean } from '../trial/text/did-you-mean.ts';
import { shown } from '../trial/text/shown.ts';
import type { Trial } from '../trial/trial.ts';

/** Trials with the language of their site; none where there are errors among the problems. */
export interface Chosen {
  readonly trials: readonly { readonly trial: Trial; readonly language: string }[];
  readonly problems: readonly Problem[];
}

/**
 * Reads the trials named, by id in the content folder or by folder wherever it is; all where names is null.
 *
 * @param progress told the trial that is being read; '' where reading is over
 * @returns a text where there is no such trial or content folder
 */
export async function trialsToAnalyse(
  content: string,
  names: readonly string[] | null,
  progress: (name: string) => void,
): Promise<Chosen | string> {
  if (names === null) {
    const { problems, site, trials } = await readContent(content, (trial, index, total) =>
      progress(`${index + 1} of ${total}: ${trial}`),
    );
    if (problems[0]?.rule === 'folder-missing') return `${problems[0].file}: ${problems[0].message}.`;
    return gathered(
      trials.map((folder) => ({ folder, language: site.language })),
      problems,
    );
  }
  const found: { readonly folder: TrialFolder; readonly language: string }[] = [];
  for (const name of names) {
    progress(name);
    const path = await folderOf(content, name);
    if (path === null) {
      const ids = await readdir(join(content, 'trials')).catch(() => []);
      return `There is no trial ${shown(name)} in ${content}/trials. ${didYouMean(name, ids, 'trial')}`;
    }
    const { site } = await readSiteFolder(dirname(dirname(path)));
    found.push({ folder: await readTrialFolder(path), language: site.language });
  }
  return gathered(found, []);
}

function gathered(
  folders: readonly { readonly folder: TrialFolder; readonly language: string }[],
  problems: readonly Problem[],
): Chosen {
  return {
    trials: folders.flatMap(({ folder, language }) => (folder.trial ? [{ trial: folder.trial, language }] : [])),
    problems: [...problems, ...folders.flatMap(({ folder }) => folder.problems)],
  };
}

/** The folder of a trial: of that id in the content folder, else the path itself; null where neither exists. */
async function folderOf(content: string, name: string): Promise<string | null> {
  for (const path of [join(resolve(content), 'trials', name), resolve(name)]) {
    const exists = await readdir(path).then(
      () => true,
      () => false,
    );
    if (exists) return path;
  }
  return null;
}
