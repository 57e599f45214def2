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
    const made = { ...head, id: newId(), count: actions.length, ended: false };
    await this.#write(async (heads, entries) => {
      await wholly(heads, [() => heads.add(made), ...[base, ...actions].map((entry, index) => () => entries.add(entry, [made.id, index]))]);
    });
    return made;
  }

  async append(head: DraftHead, actions: readonly LoggedAction[], at: number): Promise<DraftHead> {
    const made = { ...head, at, count: head.count + actions.length, ended: false };
    const before = await this.#write(async (heads, entries) => {
      const [kept] = await wholly(heads, [
        () => heads.get(head.id),
        ...actions.map((action, index) => () => entries.add(action, [head.id, head.count + 1 + index])),
        () => heads.put(made),
      ]);
      return kept as DraftHead | undefined;
    }).catch((error: unknown) => {
      // An action of that number is there.
      throw error instanceof DOMException && error.name === 'ConstraintError' ? new DraftTaken() : error;
    });
    if (before === undefined) await this.remove(head.id);
    if (before?.count !== head.count) throw new DraftTaken();
    return made;
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

/**
 * Asks for everything in one go and waits for nothing in between: what a page asks for while it is left is still done, and what
 * it would ask for after an answer is not.
 */
async function wholly(heads: Heads, asks: readonly (() => Promise<unknown>)[]): Promise<unknown[]> {
  const asked: Promise<unknown>[] = [];
  try {
    for (const ask of asks) asked.push(ask());
    heads.transaction.commit();
  } catch (error) {
    // What was asked before fails with the transaction, for this reason.
    void Promise.allSettled(asked);
    throw error;
  }
  return Promise.all(asked);
}

/** A number that no draft has, without asking the table for it. */
function newId(): number {
  return Date.now() * 1000 + Math.floor(Math.random() * 1000);
}

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
