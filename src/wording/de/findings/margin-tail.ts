import { heldBack } from './held-back.ts';
import type { Saying } from './saying.ts';

/** What a difference that was shown means for the smallest difference that matters. */
export function marginTail(s: Saying): string {
  const { facts, threshold } = s;
  if (facts.margin === null) return ' Ein kleinster Unterschied, der zählt, wurde vorher nicht festgelegt.';
  if (facts.likenessHeldBack !== null) return heldBack(s);
  if (!facts.marginFixed)
    return ` Offen ist, ob der Unterschied die genannte ${threshold} erreicht; sie wurde nicht vor dem Zählen festgelegt.`;
  return ` Offen ist, ob der Unterschied die ${threshold} erreicht, ab der er zählen sollte.`;
}
