import type { NoticeId } from '../../notice-ids.ts';
import type { SpeciesNotice } from '../../species.ts';
import { SOURCES } from '../../sources.ts';
import type { NoticeText } from '../../notice-text.ts';

const { badBugBook, cfr112, fdaSprouts, gardening, nacmcf } = SOURCES;
const fromMemory = { text: 'General knowledge of poisonous plants', url: null, read: false };

/** Notices about eating: what is no food, and what must never be. `{crops}` is filled with the crops. */
export const food: Readonly<
  Record<
    Extract<NoticeId, 'seedlings-eaten' | 'not-food' | Exclude<SpeciesNotice, `desiccation-${string}`>>,
    NoticeText
  >
> = {
  'seedlings-eaten': {
    title: 'Seedlings that are eaten',
    sentences: [
      'Sprouts and microgreens can carry germs that no rinsing removes, and they have made many people ill.',
      'Seed sold for sowing is not food; use seed that is sold for sprouting.',
      'Keep everything clean and cool, and throw away what smells or looks wrong.',
      'Young, old, pregnant and weakened people should not eat them raw.',
    ],
    sources: [fdaSprouts, cfr112, nacmcf],
  },
  'not-food': {
    title: 'These seedlings are not food',
    sentences: [
      'Seedlings of a trial are not food: seed for sowing may be dressed, and trays may hold mould or what was used to treat the seed.',
    ],
    sources: [{ text: 'Rule of the seed-testing trade', url: null, read: false }],
  },
  'toxic-castor': {
    title: 'Castor bean is deadly poisonous',
    sentences: [
      'Seed of {crops} holds ricin; a few chewed seeds can kill.',
      'Keep seed, seedlings and spilt seed from children and animals.',
    ],
    sources: [gardening, fromMemory],
  },
  'toxic-nightshade': {
    title: 'Nightshade seedlings are not microgreens',
    sentences: [
      'Leaves, stems and seedlings of {crops} hold poisons, even where the ripe fruit is food.',
      'Do not eat them, and keep them from children and animals.',
    ],
    sources: [gardening],
  },
  'toxic-rhubarb': {
    title: 'Rhubarb leaves are poisonous',
    sentences: [
      'Leaves and seedlings of {crops} hold oxalic acid.',
      'Do not eat them, and keep them from children and animals.',
    ],
    sources: [gardening],
  },
  'toxic-bean': {
    title: 'Raw beans are poisonous',
    sentences: [
      'Raw beans and bean sprouts of kinds such as {crops} hold a poison that makes people badly ill within hours; a few raw beans are enough.',
      'Warming does not remove it; only proper boiling does, which sprouts and seedlings do not get.',
      'Keep them from children.',
    ],
    sources: [badBugBook],
  },
  'toxic-foxglove': {
    title: 'Foxglove is poisonous',
    sentences: [
      'Every part of {crops} acts on the heart, seed and seedlings included.',
      'Keep it from children and animals, and wash your hands.',
    ],
    sources: [fromMemory],
  },
  'toxic-lupin': {
    title: 'Bitter lupin is poisonous',
    sentences: ['Seed and seedlings of bitter kinds of {crops} are poisonous.', 'Keep them from children and animals.'],
    sources: [fromMemory],
  },
  'toxic-ornamental': {
    title: 'Poisonous seed',
    sentences: ['Seed of {crops} is poisonous.', 'Keep seed and seedlings from children and animals.'],
    sources: [fromMemory],
  },
  'toxic-kernel': {
    title: 'Kernels are poisonous',
    sentences: ['Kernels and seedlings of {crops} set free prussic acid when chewed.', 'Keep them from children.'],
    sources: [fromMemory],
  },
  'toxic-buckwheat': {
    title: 'Buckwheat greens',
    sentences: ['Greens of {crops}, eaten in quantity, can make skin burn in the sun.'],
    sources: [gardening],
  },
  allergen: {
    title: 'Allergies',
    sentences: [
      'Seed and dust of {crops} bring on allergies in some people.',
      'Say what is in it before anyone handles or eats it.',
    ],
    sources: [{ text: 'General knowledge of food allergens', url: null, read: false }],
  },
};
