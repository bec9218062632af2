import type { Hazard } from '../../../trial/trial.ts';
import type { SpeciesNotice } from '../../species.ts';
import { SOURCES } from '../../sources.ts';
import type { NoticeText } from '../../notice-text.ts';

const S = SOURCES;
const safety = { text: 'General knowledge of safe handling', url: null, read: false };

/** Notices about what is done with seed: heat, cold, chemicals, dust, giving seed away. */
export const handling: Readonly<
  Record<Hazard | 'seed-dressed' | Extract<SpeciesNotice, `desiccation-${string}`>, NoticeText>
> = {
  'seed-dressed': {
    title: 'Dressed seed',
    sentences: [
      'Seed treated with a pesticide is never eaten, by people or by animals, nor are its seedlings.',
      'Wear gloves, keep the label with the seed, and follow it.',
    ],
    sources: [S.cfr201Treated, S.cfr2Treated],
  },
  'hot-water': {
    title: 'Hot water',
    sentences: [
      'Hot water scalds, and published times and temperatures differ; this page gives none to follow.',
      'The treatment can kill old, primed, pelleted or large seed, so a small sample of the lot is tried first, and no seed is treated twice.',
    ],
    sources: [S.hygHotWater],
  },
  disinfectant: {
    title: 'Bleach, peroxide and other disinfectants',
    sentences: [
      'They burn eyes and skin and give off fumes; follow the label of the product.',
      'Never mix cleaners: bleach with acid, vinegar or ammonia sets free poisonous gas.',
      'They clean the surface of seed only. In some countries such a use of a product is itself regulated.',
    ],
    sources: [S.hygHotWater, safety],
  },
  acid: {
    title: 'Acids',
    sentences: [
      'Strong acids on hard seed are a method of laboratories, not of kitchens: they burn skin and eyes and boil up with water.',
    ],
    sources: [S.cfr201Acid, safety],
  },
  desiccant: {
    title: 'Drying agents',
    sentences: [
      'Dust of silica gel and other drying agents harms the lungs; blue gel may hold a cobalt salt that is worse.',
      'Hot gel burns, quicklime is caustic. Packets are not food: keep them from children and animals.',
      'Seed sealed while still moist spoils sooner than seed left in paper.',
    ],
    sources: [S.handbook506, S.reach, safety],
  },
  'oxygen-absorber': {
    title: 'Oxygen absorbers',
    sentences: [
      'Packets of iron powder are not food and not silica gel; keep them from children and animals.',
      'Without air only dry seed keeps; damp seed ferments and dies. What is said here about seed says nothing about storing food.',
    ],
    sources: [safety],
  },
  freezer: {
    title: 'Freezing seed',
    sentences: [
      'Only dry seed bears the freezer.',
      'Let a closed jar warm up before it is opened, or water settles on the seed.',
    ],
    sources: [safety],
  },
  'dry-ice': {
    title: 'Dry ice',
    sentences: [
      'Dry ice freezes skin, fills a room with gas that nobody can breathe, and bursts closed jars.',
      'Use it only in the open, and never seal it in.',
    ],
    sources: [safety],
  },
  oven: {
    title: 'Ovens',
    sentences: [
      'Paper and seed in an oven can catch fire; stay beside it.',
      'A kitchen oven is no laboratory oven: moisture found with it is a rough figure.',
    ],
    sources: [S.hart, safety],
  },
  'heat-mat': {
    title: 'Heat mats and heaters',
    sentences: ['Electric heat near water and paper: use a device made for it, on a safe socket, and not unattended.'],
    sources: [safety],
  },
  mould: {
    title: 'Mould',
    sentences: [
      'Mould can bring on allergy, asthma and infections of the lungs; do not sniff at dishes, and throw them away closed.',
      'Mouldy dead seeds are taken out and recorded at each check.',
    ],
    sources: [S.cfr201Mould, safety],
  },
  'seed-offered': {
    title: 'Giving or selling seed',
    sentences: [
      'Seed law may ask for labels and for a germination test, and protected varieties may not be passed on freely.',
      'Sending seed across borders is subject to plant-health rules, even a few seeds in a letter. Listed weeds may not be sent at all.',
      'The figures here are no official test and raise no figure on a label.',
    ],
    sources: [S.cfr201Open, S.eu2016, S.smallLots, S.eu2002, S.cfr361],
  },
  'desiccation-sensitive': {
    title: 'Seed that must not dry',
    sentences: [
      'Seed of {crops}, or of kinds close to it, dies when it is dried. What is said here about drying and storing does not hold for it.',
    ],
    sources: [S.cpc, S.ufIfas],
  },
  'desiccation-intermediate': {
    title: 'Seed that bears little drying',
    sentences: [
      'Seed of {crops}, or of kinds close to it, bears only some drying or no frost; sources do not agree about it.',
    ],
    sources: [S.ellis1990, S.ufIfas],
  },
};
