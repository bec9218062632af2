import type { Sowing } from '../../trial/trial.ts';
import { apartPairs } from './apart-pairs.ts';
import { makeCaveat } from './make-caveat.ts';
import type { Rule } from './rule.ts';

/** The treatments stood in different blocks, none shared. */
export const confoundedBlock: Rule = (trial, results) =>
  apartPairs(trial, results, ({ treated, control }) => ({
    treated: treated.sowings.map(blockOf),
    control: control.sowings.map(blockOf),
  })).map(({ pair, evidence }) => makeCaveat('confounded-block', pair.about, evidence));

const blockOf = ({ block }: Sowing): string[] => (block === null ? [] : [block]);
