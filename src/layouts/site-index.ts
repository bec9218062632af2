import type { UiKey } from '../wording/words.ts';

export interface IndexEntry {
  /** Address below the base, with slashes at both ends where it is a page. */
  readonly path: string;
  readonly name: UiKey;
  /** Stands in the head of every page as well: at most six do, so that it stays one calm line. */
  readonly main?: true;
}

export interface IndexGroup {
  readonly title: UiKey;
  readonly entries: readonly IndexEntry[];
}

/** Every page that stands by itself, in groups: the index at the foot of each page. A new page adds its line here. */
export const siteIndex: readonly IndexGroup[] = [
  {
    title: 'index.findings',
    entries: [
      { path: '/trials/', name: 'nav.trials', main: true },
      { path: '/trials/by/crop/', name: 'by.crop' },
      { path: '/trials/by/treatment/', name: 'by.treatment' },
      { path: '/questions/', name: 'nav.questions', main: true },
      { path: '/lots/', name: 'nav.lots' },
      { path: '/people/', name: 'nav.people' },
    ],
  },
  {
    title: 'index.bench',
    entries: [
      { path: '/plan/', name: 'nav.plan', main: true },
      { path: '/record/', name: 'nav.record' },
    ],
  },
  {
    title: 'index.behind',
    entries: [
      { path: '/methods/', name: 'nav.methods', main: true },
      { path: '/glossary/', name: 'nav.glossary' },
      { path: '/notices/', name: 'nav.notices' },
      { path: '/data-format/', name: 'nav.dataFormat' },
      { path: '/seed-storage/', name: 'nav.seedStorage' },
    ],
  },
  {
    title: 'index.site',
    entries: [
      { path: '/search/', name: 'nav.search', main: true },
      { path: '/about/', name: 'nav.about' },
      { path: '/feed.xml', name: 'nav.feed' },
    ],
  },
];
