import type { Block, PrintDocument } from '../document.ts';
import { pageOf } from '../page-of.ts';
import type { SheetTrial } from './sheet.ts';

/** The page that all sheets share: trial and digest of the plan at its head, title first. */
export function sheetDocument(
  { trial, site, words }: SheetTrial,
  title: string,
  blocks: readonly Block[],
  turned = false,
): PrintDocument {
  const digest = trial.plan?.computedDigest.slice(0, 12);
  return {
    title: `${title}: ${trial.title}`,
    language: words.language,
    authors: trial.authors.map(({ name }) => name),
    date: trial.plan?.fixed ?? trial.sown,
    paper: site.paper,
    turned,
    density: 'close',
    head: [trial.title, digest ? words.say('sheet.planDigest', { digest }) : title],
    foot: `${site.name} · ${trial.id}`,
    pageOf: pageOf(words),
    pictures: {},
    blocks: [{ kind: 'title', text: title }, ...blocks],
  };
}
