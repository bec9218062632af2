import type { UnitKind } from '../../analysis/analysis.ts';
import type { Trial } from '../../trial/trial.ts';
import { containerNoun } from './container-noun.ts';
import { noun, type Noun } from './noun.ts';

/** What one unit is called in this trial: its container, the batch treated together, or its block. */
export function unitNoun({ sowing }: Pick<Trial, 'sowing'>, kind: UnitKind): Noun {
  if (kind === 'batch') return BATCH;
  if (kind === 'block') return blockNoun(sowing.block);
  const found = containerNoun(sowing.container);
  return kind === 'tray' && !HOLDS_SEVERAL.test(found.one) ? TRAY : found;
}

const BATCH = noun('f', 'Charge', 'Chargen');
const TRAY = noun('f', 'Schale', 'Schalen');
const BLOCK = noun('m', 'Block', 'Blöcke');
const HOLDS_SEVERAL = /(schale|kiste|box|platte|dose|wanne|kasten)$/i;

const BLOCKS: readonly (readonly [words: RegExp, Noun])[] = [
  [/^(?:shelf|regalbrett|brett|regalboden)$/i, noun('n', 'Regalbrett', 'Regalbretter')],
  [/^(?:fach|regalfach)$/i, noun('n', 'Fach', 'Fächer')],
  [/^(?:regal)$/i, noun('n', 'Regal', 'Regale')],
  [/^(?:day|tag|sowing day|saattag|aussaattag)$/i, noun('m', 'Tag', 'Tage')],
  [/^(?:week|woche)$/i, noun('f', 'Woche', 'Wochen')],
  [/^(?:bed|beet)$/i, noun('n', 'Beet', 'Beete')],
  [/^(?:row|reihe)$/i, noun('f', 'Reihe', 'Reihen')],
  [/^(?:room|raum)$/i, noun('m', 'Raum', 'Räume')],
  [/^(?:table|bench|tisch)$/i, noun('m', 'Tisch', 'Tische')],
  [/^(?:window|fenster)$/i, noun('n', 'Fenster', 'Fenster')],
  [/^(?:windowsill|fensterbank)$/i, noun('f', 'Fensterbank', 'Fensterbänke')],
  [/^(?:mat|heat mat|heizmatte|matte)$/i, noun('f', 'Heizmatte', 'Heizmatten')],
];

const blockNoun = (block: string | null): Noun =>
  BLOCKS.find(([words]) => words.test(block?.trim() ?? ''))?.[1] ?? BLOCK;
