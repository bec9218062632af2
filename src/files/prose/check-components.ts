import type { Analysis } from '../../analysis/analysis.ts';
import type { FileProblems, Place } from '../../trial/file-problems.ts';
import { didYouMean } from '../../trial/text/did-you-mean.ts';
import type { Trial } from '../../trial/trial.ts';
import type { Words } from '../../wording/words.ts';
import { walk, type ProseNode } from '../prose-node.ts';
import { AttributeError } from './attribute-error.ts';
import { attributesOf } from './attributes-of.ts';
import { chosenDay } from './chosen-day.ts';
import { chosenKind } from './chosen-kind.ts';
import { chosenNumber } from './chosen-number.ts';
import { chosenResult, type Choice } from './chosen-result.ts';
import { chosenTable } from './chosen-table.ts';
import { claimError } from './claim-error.ts';
import { textOf } from './text-of.ts';

/** A trial, and its analysis once somebody asks for it: most of the time goes there. */
export interface TrialData {
  readonly trial: Trial;
  readonly analysis: () => Analysis;
}

/** What each component may be given, and what it shows of the trial; in the order of design.md. */
const ATTRIBUTES: Readonly<Record<string, readonly string[]>> = {
  InShort: [],
  Result: ['outcome', 'lot', 'treatment'],
  Chart: ['outcome', 'lot', 'kind'],
  Table: ['outcome', 'lot', 'treatment', 'of'],
  Num: ['outcome', 'lot', 'treatment', 'of'],
  Claim: ['outcome', 'lot', 'treatment', 'stored', 'is'],
  Photos: ['day'],
  Methods: [],
  Caveats: [],
};

/**
 * Checks every component of an author's text against the trial: names of attributes, their values, whether
 * the data carry what a claim says.
 */
export function checkComponents(tree: ProseNode, data: TrialData, words: Words, report: FileProblems): void {
  for (const node of walk(tree)) {
    if (node.type === 'image') checkPicture(node, data.trial, report);
    const attributes = ATTRIBUTES[node.name ?? ''];
    if (!node.type.startsWith('mdxJsx') || !attributes) continue;
    try {
      checkShape(node, attributes);
      checkValues(node, data, words);
    } catch (error) {
      if (!(error instanceof AttributeError)) throw error;
      const rule = node.name === 'Claim' ? 'prose-claim' : 'prose-choice';
      report.error(startOf(node), { rule, message: error.found, remedy: error.remedy });
    }
  }
}

/** An address of the right shape names a picture that is there; other addresses are refused before. */
function checkPicture(node: ProseNode, { photos }: Trial, report: FileProblems): void {
  const file = (node.url ?? '').replace(/^\.\//, '');
  if (!file.startsWith('photos/') || photos.some((photo) => photo.file === file)) return;
  const files = photos.map((photo) => photo.file);
  report.error(startOf(node), {
    rule: 'prose-image',
    message: `there is no picture ${file}`,
    remedy: didYouMean(file, files, 'picture'),
  });
}

function checkShape(node: ProseNode, allowed: readonly string[]): void {
  const given = attributesOf(node);
  const names = (node.attributes ?? []).map(({ name = '…' }) => name);
  for (const [name, value] of given) {
    if (!allowed.includes(name)) {
      const which = allowed.length === 0 ? 'it takes none' : `allowed: ${allowed.join(', ')}`;
      const remedy = allowed.length === 0 ? 'Take it out.' : didYouMean(name, allowed, 'attribute');
      throw new AttributeError(`<${node.name}>: found the attribute ${name}; ${which}`, remedy);
    }
    if (typeof value === 'boolean' || value === '') {
      throw new AttributeError(`<${node.name} ${name}>: found no value`, `Write ${name}="…", or take it out.`);
    }
    if (names.filter((other) => other === name).length > 1) {
      throw new AttributeError(`<${node.name}>: found the attribute ${name} twice`, 'Take one of them out.');
    }
  }
  const isClaim = node.name === 'Claim';
  if (!isClaim && textOf(node).trim() !== '') {
    throw new AttributeError(
      `<${node.name}>: found words inside it, which would not be shown`,
      `Write <${node.name}/> and the words before or after it.`,
    );
  }
}

function checkValues(node: ProseNode, { trial, analysis }: TrialData, words: Words): void {
  const given = Object.fromEntries([...attributesOf(node)].map(([name, value]) => [name, String(value)])) as Choice &
    Readonly<Partial<Record<'of' | 'kind' | 'is' | 'stored' | 'day', string>>>;
  switch (node.name) {
    case 'Result':
      chosenResult('Result', analysis(), given);
      break;
    case 'Chart':
      chosenKind(analysis(), given);
      break;
    case 'Table':
      chosenTable(analysis(), given);
      break;
    case 'Num':
      chosenNumber(words, trial, analysis(), given);
      break;
    case 'Photos':
      chosenDay(trial, given.day);
      break;
    case 'Claim': {
      if ([...walk(node)].some((inner) => inner !== node && inner.name === 'Claim')) {
        throw new AttributeError('<Claim>: found a claim inside a claim', 'Write them one after the other.');
      }
      const error = claimError(words, trial, analysis(), given, textOf(node));
      if (error) throw error;
    }
  }
}

function startOf({ position }: ProseNode): Place {
  return { line: position?.start.line ?? null, column: position?.start.column ?? null, cell: null, field: null };
}
