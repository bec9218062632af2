import type { Person, Site } from '../trial/trial.ts';
import type { Published } from './front-page.ts';

/** Someone whom a published trial names, and what they did in each. */
export interface ShownPerson {
  readonly person: Person;
  readonly trials: readonly {
    readonly entry: Published;
    readonly isAuthor: boolean;
    readonly roles: readonly string[];
  }[];
}

/**
 * Everyone whom a published trial names as an author or with a role, by name; whoever stands in people.yaml only is
 * nobody's business. Someone with a role who is known to no file that was read is left out.
 */
export function peopleShown(site: Site, published: readonly Published[], language: string): readonly ShownPerson[] {
  const known = new Map(Object.entries(site.people));
  for (const { trial } of published) for (const author of trial.authors) known.set(author.id, author);
  const { compare } = new Intl.Collator(language);
  return [...known.values()]
    .map((person) => ({ person, trials: published.flatMap((entry) => partIn(entry, person.id)) }))
    .filter(({ trials }) => trials.length > 0)
    .sort((a, b) => compare(a.person.name, b.person.name) || (a.person.id < b.person.id ? -1 : 1));
}

function partIn(entry: Published, id: string): ShownPerson['trials'] {
  const isAuthor = entry.trial.authors.some((author) => author.id === id);
  const roles = entry.trial.roles[id] ?? [];
  return isAuthor || roles.length > 0 ? [{ entry, isAuthor, roles }] : [];
}
