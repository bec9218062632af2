/**
 * Greatest moisture of vegetable seed in sealed packets, % wet basis, 7 CFR 201.36c (2015 edition); `all others` 6.0.
 * Crops by the English names of the rule.
 */
export const SEALED_MOISTURE: readonly (readonly [percent: number, crops: readonly SealedCrop[]])[] = [
  [4.5, ['pepper']],
  [5, ['broccoli', 'brussels-sprouts', 'cabbage', 'chinese-cabbage', 'cauliflower', 'collards', 'kale', 'kohlrabi', 'mustard', 'radish', 'rutabaga', 'turnip']],
  [5.5, ['lettuce', 'tomato']],
  [6, ['cucumber', 'eggplant', 'melon', 'parsnip', 'pumpkin', 'squash', 'others']],
  [6.5, ['chives', 'leek', 'onion', 'welsh-onion', 'parsley', 'watermelon']],
  [7, ['bean', 'carrot', 'celery', 'celeriac', 'pea']],
  [7.5, ['beet', 'chard']],
  [8, ['sweet-corn', 'spinach']],
]; // prettier-ignore

export type SealedCrop =
  | 'pepper' | 'broccoli' | 'brussels-sprouts' | 'cabbage' | 'chinese-cabbage' | 'cauliflower' | 'collards' | 'kale'
  | 'kohlrabi' | 'mustard' | 'radish' | 'rutabaga' | 'turnip' | 'lettuce' | 'tomato' | 'cucumber' | 'eggplant' | 'melon'
  | 'parsnip' | 'pumpkin' | 'squash' | 'others' | 'chives' | 'leek' | 'onion' | 'welsh-onion' | 'parsley' | 'watermelon'
  | 'bean' | 'carrot' | 'celery' | 'celeriac' | 'pea' | 'beet' | 'chard' | 'sweet-corn' | 'spinach'; // prettier-ignore
