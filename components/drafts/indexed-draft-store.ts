import { openDB, type DBSchema, type IDBPDatabase, type IDBPObjectStore } from 'idb';
import type { LoggedAction, Snapshot } from '../../src/schedule/index.ts';
import { DraftTaken, type DraftBody, type DraftHead, type DraftStore } from './draft-store.ts';

const DATABASE = 'elv-load-schedule';

interface Tables extends DBSchema {
  heads: { key: number; value: DraftHead; indexes: { key: string } };
  /** By draft and number: the base is 0, the actions follow. */
  entries: { key: [number, number]; value: Snapshot | LoggedAction };
}

/** Keeps drafts in the browser's own database. */
export class IndexedDraftStore implements DraftStore {
  #database: Promise<IDBPDatabase<Tables>> | undefined;

  async list(key: string): Promise<DraftHead[]> {
    return (await this.#open()).getAllFromIndex('heads', 'key', key);
  }

  async create(head: Omit<DraftHead, 'id' | 'count' | 'ended'>, { base, actions }: DraftBody): Promise<DraftHead> {
    return this.#write(async (heads, entries) => {
      const made = { ...head, count: actions.length, ended: false };
      // The table gives the id.
      const id = await heads.add(made as DraftHead);
      await Promise.all([base, ...actions].map(async (entry, index) => entries.add(entry, [id, index])));
      return { ...made, id };
    });
  }

  async append(head: DraftHead, actions: readonly LoggedAction[], at: number): Promise<DraftHead> {
    return this.#write(async (heads, entries) => {
      const kept = await heads.get(head.id);
      if (kept?.count !== head.count) throw new DraftTaken();
      const made = { ...kept, at, count: head.count + actions.length, ended: false };
      await Promise.all(actions.map(async (action, index) => entries.add(action, [head.id, head.count + 1 + index])));
      await heads.put(made);
      return made;
    });
  }

  async read(id: number): Promise<DraftBody | undefined> {
    const [base, ...actions] = await (await this.#open()).getAll('entries', entriesOf(id));
    return base === undefined ? undefined : { base: base as Snapshot, actions: actions as LoggedAction[] };
  }

  async end(id: number, ended: boolean): Promise<void> {
    await this.#write(async (heads) => {
      const head = await heads.get(id);
      if (head !== undefined) await heads.put({ ...head, ended });
    });
  }

  async remove(id: number): Promise<void> {
    await this.#write(async (heads, entries) => { await Promise.all([heads.delete(id), entries.delete(entriesOf(id))]); });
  }

  close(): void {
    void this.#database?.then((database) => { database.close(); });
    this.#database = undefined;
  }

  /** Opened again where the browser ended the connection, as when a person clears what pages have stored. */
  #open(): Promise<IDBPDatabase<Tables>> {
    const forget = () => { this.#database = undefined; };
    this.#database ??= openDB<Tables>(DATABASE, 1, {
      upgrade(database) {
        database.createObjectStore('heads', { keyPath: 'id', autoIncrement: true }).createIndex('key', 'key');
        database.createObjectStore('entries');
      },
      // Newer software may change the tables; what this page still writes is then refused, and told.
      blocking: () => { this.close(); },
      terminated: forget,
    });
    this.#database.catch(forget);
    return this.#database;
  }

  async #write<Result>(task: (heads: Heads, entries: Entries) => Promise<Result>): Promise<Result> {
    const transaction = (await this.#open()).transaction(['heads', 'entries'], 'readwrite');
    try {
      const result = await task(transaction.objectStore('heads'), transaction.objectStore('entries'));
      transaction.commit();
      await transaction.done;
      return result;
    } catch (error) {
      throw await reasonOf(transaction, error);
    }
  }
}

type Both = ['heads', 'entries'];
type Heads = IDBPObjectStore<Tables, Both, 'heads', 'readwrite'>;
type Entries = IDBPObjectStore<Tables, Both, 'entries', 'readwrite'>;

/** The range of everything that belongs to a draft. */
function entriesOf(id: number): IDBKeyRange {
  return IDBKeyRange.bound([id, 0], [id, Infinity]);
}

/** Ends a transaction that failed. @returns why: a full disk shows in the transaction, and not in what was asked of it. */
async function reasonOf(
  transaction: { abort(): void; readonly done: Promise<void>; readonly error: DOMException | null }, error: unknown,
): Promise<unknown> {
  try {
    transaction.abort();
  } catch { /* it has ended by itself */ }
  await transaction.done.catch(() => undefined);
  return transaction.error ?? error;
}
