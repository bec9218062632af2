import type { Amount } from '../amount.ts';
import { amountDigits } from '../amount-digits.ts';
import { number } from './number.ts';

/** An amount without its direction: "12", "1,2", "unter 1", "knapp über 10". A margin keeps its own digits. */
export const amountText = (amount: Amount): string => NEAR[amount.near] + number(amount.size, amountDigits(amount));

const NEAR: Readonly<Record<Amount['near'], string>> = {
  exact: '',
  'less-than': 'unter ',
  'just-over': 'knapp über ',
  'just-under': 'knapp unter ',
};
