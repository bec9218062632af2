import { openDB } from 'idb';
import type { BenchSession } from '../../trial/bench/bench.ts';

const SESSIONS = 'sessions';
const opened = () => openDB('fairsown-record', 1, { upgrade: (database) => void database.createObjectStore(SESSIONS) });

/** Every trial on this device. */
export async function storedSessions(): Promise<BenchSession[]> {
  return (await opened()).getAll(SESSIONS);
}

export async function storedSession(id: string): Promise<BenchSession | undefined> {
  return (await opened()).get(SESSIONS, id);
}

/**
 * Stores a session that was changed once.
 *
 * @returns the session that is stored instead, where another window changed it in the meantime
 */
export async function store(session: BenchSession, before: number | null): Promise<BenchSession | null> {
  const transaction = (await opened()).transaction(SESSIONS, 'readwrite', { durability: 'strict' });
  const there: BenchSession | undefined = await transaction.store.get(session.trial.id);
  const isOurs = there === undefined || there.revision === before;
  if (isOurs) await transaction.store.put(session, session.trial.id);
  await transaction.done;
  return isOurs ? null : there;
}

export async function removeStored(id: string): Promise<void> {
  await (await opened()).delete(SESSIONS, id);
}
