import type { Analysis } from '../../analysis/analysis.ts';
import { FileProblems, WHOLE_FILE } from '../../trial/file-problems.ts';
import type { Problem } from '../../trial/problem.ts';
import { decodeText } from '../../trial/text/decode-text.ts';
import type { Trial } from '../../trial/trial.ts';
import { wordsFor } from '../../wording/words-for.ts';
import { checkOwnWords } from './check-own-words.ts';
import { checkProse } from './check-prose.ts';

/**
 * Everything that there is to say about the author's own words: title, summary and impression in
 * trial.yaml, and the text in report.md or report.mdx.
 *
 * @param files    bytes by name
 * @param folder   path as the author knows it
 * @param trial    null where its files have errors: then nothing is compared with the data
 * @param language of the site, as in site.yaml
 * @param analysis of the trial, asked for only where a text is compared with it
 */
export function checkTexts(
  files: ReadonlyMap<string, Uint8Array>,
  folder: string,
  trial: Trial | null,
  language: string,
  analysis: (trial: Trial) => Analysis,
): Problem[] {
  const words = wordsFor(language);
  const data = trial && { trial, analysis: () => analysis(trial) };
  const yaml = decodeText(files.get('trial.yaml') ?? new Uint8Array());
  const own = data && 'text' in yaml ? checkOwnWords(yaml.text, `${folder}/trial.yaml`, words, data) : [];
  const prose = ['report.md', 'report.mdx'].flatMap((name) => {
    const bytes = files.get(name);
    return bytes ? checkProse(bytes, `${folder}/${name}`, words, data) : [];
  });
  return [...own, ...prose, ...textsTwice(files, folder)];
}

/** A page shows one text: the other would be lost without a word. */
function textsTwice(files: ReadonlyMap<string, Uint8Array>, folder: string): readonly Problem[] {
  const report = new FileProblems(`${folder}/report.md`);
  if (files.has('report.md') && files.has('report.mdx')) {
    report.error(WHOLE_FILE, {
      rule: 'prose-twice',
      message: 'there is a report.mdx as well, and a report shows one text',
      remedy: 'Put all your words into one of the two and delete the other.',
    });
  }
  return report.problems;
}
