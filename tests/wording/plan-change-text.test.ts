import { expect, test } from 'vitest';
import { planChangeText as german } from '../../src/wording/de/plan-change-text.ts';
import { planChangeText as english } from '../../src/wording/en/plan-change-text.ts';

test('another day of sowing and another thing varied are told in both languages', () => {
  const sown = { what: 'sown', planned: '2026-04-02', done: '2026-04-04' };
  const varies = { what: 'varies', planned: 'soak', done: 'storage' };
  expect([sown, varies].map(english)).toEqual([
    'The day of sowing: the plan said “2026-04-02”; now it is “2026-04-04”.',
    'The thing changed on purpose: the plan said “soak”; now it is “storage”.',
  ]);
  expect([sown, varies].map(german)).toEqual([
    'Tag der Aussaat: Der Plan sagte „2026-04-02“; jetzt ist es „2026-04-04“.',
    'Was mit Absicht geändert wird: Der Plan sagte „Einweichen“; jetzt ist es „Lagerung“.',
  ]);
});
