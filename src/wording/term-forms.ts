/**
 * How the terms of the glossary stand in running text, by the id of the term. Sources of regular expressions, flag `u`:
 * `any` in either case, `exact` as written (single letters, symbols). What is likely to mean something else is left out
 * ("check" is mostly a verb); whole words only, which the finder sees to.
 */
export type TermForms = Readonly<Record<string, { readonly any?: string; readonly exact?: string }>>;
