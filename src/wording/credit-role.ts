/**
 * The fourteen roles of the open CRediT taxonomy by the last step of their addresses at credit.niso.org, with their
 * official English names. Source: ANSI/NISO Z39.104-2022, CRediT, Contributor Roles Taxonomy.
 */
export const CREDIT_ROLES = {
  conceptualization: 'Conceptualization',
  'data-curation': 'Data curation',
  'formal-analysis': 'Formal analysis',
  'funding-acquisition': 'Funding acquisition',
  investigation: 'Investigation',
  methodology: 'Methodology',
  'project-administration': 'Project administration',
  resources: 'Resources',
  software: 'Software',
  supervision: 'Supervision',
  validation: 'Validation',
  visualization: 'Visualization',
  'writing-original-draft': 'Writing – original draft',
  'writing-review-editing': 'Writing – review & editing',
} as const;

export type CreditRole = keyof typeof CREDIT_ROLES;

/** Beginnings of a role as growers write it, in the languages of the reports; the first that fits counts. */
export type RoleWords = readonly (readonly [CreditRole, readonly string[]])[];

/**
 * The CRediT role that a role in a grower's words falls under, or null where none fits: "counted the seedlings" is
 * Investigation, "made the tea" is none. The taxonomy's own names are known in every language.
 *
 * @param roleWords the words of the site's language
 */
export function creditRole(role: string, roleWords: RoleWords): CreditRole | null {
  const text = role.trim().toLowerCase();
  const ids = Object.keys(CREDIT_ROLES) as CreditRole[];
  const plain = (name: string) => name.toLowerCase().replace(/[^a-z]+/g, ' ');
  const named = ids.find((id) => plain(CREDIT_ROLES[id]) === plain(text) || id === text);
  return named ?? roleWords.find(([, begins]) => begins.some((word) => text.startsWith(word)))?.[0] ?? null;
}
