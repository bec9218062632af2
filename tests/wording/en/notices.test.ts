import { expect, test } from 'vitest';
import type { Hazard, Trial } from '../../../src/trial/trial.ts';
import { wordsFor } from '../../../src/wording/words-for.ts';
import { makeLot, makeTrial } from '../../support/make-trial.ts';

const HAZARDS: readonly Hazard[] = [
  'hot-water',
  'disinfectant',
  'acid',
  'desiccant',
  'oxygen-absorber',
  'freezer',
  'dry-ice',
  'oven',
  'heat-mat',
  'mould',
  'seed-offered',
];
const words = wordsFor('en');
const of = (parts: Partial<Trial>, site: readonly string[] = []) => words.notices(makeTrial(parts), site);
const ids = (parts: Partial<Trial>) => of(parts).map(({ id }) => id);
const species = (...names: string[]) => ({ lots: names.map((name) => makeLot(name, name.split(' ')[0], name)) });

test('a trial without hazards says only that its seedlings are not food', () => {
  expect(ids({})).toEqual(['not-food']);
});

test('each fact of the trial brings its notice', () => {
  expect(ids({ seedlingsEaten: true })).toEqual(['seedlings-eaten']);
  expect(ids({ seedDressed: true })).toEqual(['not-food', 'seed-dressed']);
  expect(ids({ involves: HAZARDS })).toEqual(['not-food', ...HAZARDS]);
  expect(ids({ varies: 'drying' })).toContain('desiccant');
});

test.each([
  ['Ricinus communis', 'toxic-castor'],
  ['Solanum lycopersicum', 'toxic-nightshade'],
  ['Capsicum annuum', 'toxic-nightshade'],
  ['Phaseolus vulgaris', 'toxic-bean'],
  ['Digitalis purpurea', 'toxic-foxglove'],
  ['Quercus robur', 'desiccation-sensitive'],
  ['Coffea arabica', 'desiccation-intermediate'],
])('%s brings the notice %s and is named in it', (name, id) => {
  const notice = of(species(name)).find((each) => each.id === id);
  expect(notice?.sentences.join(' ')).toContain(name.split(' ')[0]);
});

test('a kind is known by whole words of its botanical name', () => {
  expect(ids(species('Allium porrum', 'Lathyrus sativus', 'Solanumoides'))).toEqual(['not-food']);
  expect(ids(species('lathyrus odoratus'))).toContain('toxic-ornamental');
});

test('allergens are named where the seedlings are eaten', () => {
  expect(ids({ ...species('Sesamum indicum'), seedlingsEaten: true })).toContain('allergen');
  expect(ids(species('Sesamum indicum'))).not.toContain('allergen');
});

test('every notice ends alike, gives no dose, and names its sources', () => {
  const many = [
    'Ricinus',
    'Solanum',
    'Rheum',
    'Phaseolus',
    'Digitalis',
    'Lupinus',
    'Datura',
    'Malus',
    'Fagopyrum',
    'Quercus',
    'Citrus',
  ];
  const all = [
    ...of({ ...species(...many), involves: HAZARDS, seedDressed: true }),
    ...of({ ...species('Lupinus'), seedlingsEaten: true }),
  ];
  expect(new Set(all.map(({ id }) => id)).size).toBe(26);
  for (const { title, sentences, sources } of all) {
    expect(sentences.at(-1), title).toBe('Local rules and qualified advice come first.');
    expect(sentences.join(' '), title).not.toMatch(/\d+ ?(°|%|ppm|minutes|min\b|ml|g\b)|\{|undefined/);
    expect(sources.length, title).toBeGreaterThan(0);
  }
});

test('the publisher’s own notices close the list', () => {
  expect(of({}, ['Ask before you pick.']).at(-1)).toEqual({
    id: 'site-1',
    title: 'From the publisher',
    sentences: ['Ask before you pick.', 'Local rules and qualified advice come first.'],
    sources: [],
  });
});

test('the texts', () => {
  const parts = {
    ...species('Phaseolus vulgaris'),
    seedlingsEaten: true,
    involves: ['hot-water', 'desiccant'] as const,
  };
  expect(
    of(parts)
      .map(({ title, sentences }) => `${title}: ${sentences.slice(0, -1).join(' ')}`)
      .join('\n'),
  ).toMatchInlineSnapshot(`
    "Seedlings that are eaten: Sprouts and microgreens can carry germs that no rinsing removes, and they have made many people ill. Seed sold for sowing is not food; use seed that is sold for sprouting. Keep everything clean and cool, and throw away what smells or looks wrong. Young, old, pregnant and weakened people should not eat them raw.
    Hot water: Hot water scalds, and published times and temperatures differ; this page gives none to follow. The treatment can kill old, primed, pelleted or large seed, so a small sample of the lot is tried first, and no seed is treated twice.
    Drying agents: Dust of silica gel and other drying agents harms the lungs; blue gel may hold a cobalt salt that is worse. Hot gel burns, quicklime is caustic. Packets are not food: keep them from children and animals. Seed sealed while still moist spoils sooner than seed left in paper.
    Raw beans are poisonous: Raw beans and bean sprouts of kinds such as Phaseolus hold a poison that makes people badly ill within hours; a few raw beans are enough. Warming does not remove it; only proper boiling does, which sprouts and seedlings do not get. Keep them from children."
  `);
});

test.each(['en', 'de'])(
  'the page of all notices fills every gap and leaves out none that a trial can carry: %s',
  (language) => {
    const all = wordsFor(language).allNotices();
    const castor = { ...species('Ricinus communis', 'Quercus robur', 'Sesamum indicum') };
    const carried = wordsFor(language)
      .notices(makeTrial({ involves: HAZARDS, seedDressed: true, seedlingsEaten: true, ...castor }), [])
      .map(({ id }) => id);
    expect(all.map(({ id }) => id)).toEqual(expect.arrayContaining(carried));
    expect(JSON.stringify(all)).not.toMatch(/[{]crops[}]/);
    expect(all.find(({ id }) => id === 'toxic-castor')?.sentences[0]).toContain('Ricinus');
  },
);
