import { EventEmitter } from 'node:events';
import { mkdtempSync, rmSync, utimesSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import { requestOverlap } from '../../src/files/request-overlap.ts';

/** A file, the writing of it, and pages that are asked for and answered. */
function served() {
  const folder = mkdtempSync(join(tmpdir(), 'fairsown-'));
  onTestFinished(() => rmSync(folder, { recursive: true }));
  const file = join(folder, 'store.json');
  let seconds = 0;
  const write = () => {
    writeFileSync(file, '{}');
    utimesSync(file, ++seconds, seconds);
  };
  write();
  let handler: (request: unknown, response: EventEmitter, next: () => void) => void = () => {};
  const middlewares = { use: (told: typeof handler) => (handler = told) };
  const overlap = requestOverlap({ middlewares } as unknown as Parameters<typeof requestOverlap>[0], file);
  const ask = (accept = 'text/html', url = '/trials/leek') => {
    const response = new EventEmitter();
    let isPassedOn = false;
    handler({ headers: { accept }, url }, response, () => (isPassedOn = true));
    expect(isPassedOn).toBe(true);
    return () => response.emit('close');
  };
  return { overlap, write, ask };
}

test('a page that was begun before the file was written may be stale', () => {
  const { overlap, write, ask } = served();
  overlap.begin();
  ask();
  write();
  expect(overlap.end()).toBe(true);
});

test('so may one that was being made when it began, not one that was answered', () => {
  const { overlap, write, ask } = served();
  const answer = ask();
  overlap.begin();
  write();
  expect(overlap.end()).toBe(true);
  answer();
  overlap.begin();
  write();
  expect(overlap.end()).toBe(false);
});

test('pages begun afterwards, other files, and a file that was not written do not matter', () => {
  const { overlap, write, ask } = served();
  overlap.begin();
  ask('text/css', '/styles.css');
  write();
  const answer = ask();
  expect(overlap.end()).toBe(false);
  answer();
  overlap.begin();
  ask();
  expect(overlap.end()).toBe(false);
});
