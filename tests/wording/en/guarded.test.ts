import { expect, test } from 'vitest';
import { guarded } from '../../../src/wording/en/guarded.ts';

const caught = (text: string) =>
  guarded()
    .filter(({ pattern }) => new RegExp(pattern, 'iu').test(text))
    .map(({ id }) => id);

/* Of each phrase: examples that trip it, and examples that just do not. */
const EXAMPLES: Readonly<Record<string, { readonly trips: readonly string[]; readonly passes: readonly string[] }>> = {
  identical: {
    trips: ['The two were identical.', 'They grew identically.', 'an identical result'],
    passes: ['They were not identical.', 'Eight identical pots were filled.'],
  },
  'the-same': {
    trips: [
      'Germination was about the same in both.',
      'They came up the same.',
      'It is the same as before',
      'Soaked did the same as dry.',
      'with the same result',
    ],
    passes: [
      'All were the same tray again.',
      'They stood on the same shelf.',
      'It was not the same.',
      'We did the same in spring.',
      'It is the same seed.',
    ],
  },
  'no-effect': {
    trips: [
      'Soaking had no effect.',
      'without any effect',
      'It does not have an effect.',
      'It didn’t have any visible effect.',
      'It has no influence',
    ],
    passes: [
      'An effect could not be shown.',
      'There may have been an effect.',
      'without any effort',
      'the effects on us',
    ],
  },
  'no-difference': {
    trips: [
      'There was no difference.',
      'It makes no difference.',
      'no clear differences',
      'They did not differ.',
      'It doesn’t make a difference',
      'No difference was seen.',
    ],
    passes: [
      'A difference could not be shown.',
      'No difference was shown (1 per 100; 4 fewer to 6 more).',
      'The difference is 3.',
      'They may differ.',
    ],
  },
  proves: {
    trips: ['This proves it.', 'a proven method', 'That is proof that it helps.', 'proving a point', 'We proved it'],
    passes: [
      'It does not prove anything.',
      'It doesn’t really prove it.',
      'One tray proves nothing.',
      'It improves with age.',
      'Counting proved tedious.',
      'unproven',
      'This is no proof of sameness.',
      'waterproof',
    ],
  },
  works: {
    trips: ['Soaking works!', 'It worked.', 'It really does work', 'This will work anywhere'],
    passes: [
      'It was hard work.',
      'I worked on it at night.',
      'We worked late.',
      'the network',
      'how it works',
      'She worked in the shed.',
      'It did not work out',
      'It doesn’t work',
      'field work',
    ],
  },
  guaranteed: {
    trips: ['Guaranteed to come up.', 'We guarantee it'],
    passes: ['Nothing is guaranteed.', 'There is no guarantee.', 'We cannot guarantee it.'],
  },
  significant: {
    trips: [
      'A significant gain.',
      'significantly more',
      'It was not significant.',
      'insignificant',
      'of no significance',
    ],
    passes: ['It signifies little.', 'a sign'],
  },
  'days-apart': {
    trips: ['The jar was 2.5 days ahead.', 'It was a day behind.', 'two days ahead'],
    passes: ['It was 2.9 days ahead (2.1 to 3.8).', 'two days earlier', 'Look ahead.', 'the days ahead'],
  },
  'hundred-per-cent': {
    trips: ['100 % came up.', '100% germination', '100 per cent came up', 'a hundred percent'],
    passes: [
      '100 % (25 of 25 seeds) came up.',
      '100 % of 25 seeds',
      '2 100 %',
      '99 % came up',
      '5.100 %',
      '100 of 100',
    ],
  },
  trend: {
    trips: ['A trend towards more.', 'trending to fewer', 'approaching significance'],
    passes: ['Trends in gardening', 'a tendency'],
  },
  doubled: {
    trips: ['Germination doubled.', 'twice as many', 'It halved.', 'half as many seedlings'],
    passes: ['Cut into halves.', 'a double layer', 'The lid doubles as a tray.', 'half of the seeds'],
  },
};

test('every phrase has its examples', () => {
  expect(guarded().map(({ id }) => id)).toEqual(Object.keys(EXAMPLES));
});

test.each(Object.entries(EXAMPLES))(
  '%s is found where it stands, and not where it just does not',
  (id, { trips, passes }) => {
    for (const text of trips) expect(caught(text), text).toContain(id);
    for (const text of passes) expect(caught(text), text).not.toContain(id);
  },
);

test.each(['almost significant', 'borderline significance', 'It came close to significance.'])(
  '%s counts as a trend as well',
  (text) => {
    expect(caught(text)).toEqual(['significant', 'trend']);
  },
);
