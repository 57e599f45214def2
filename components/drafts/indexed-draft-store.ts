import { openDB, type DBSchema, type IDBPDatabase, type IDBPObjectStore } from 'idb';
import type { LoggedAction, Snapshot } from '../../src/schedule/index.ts';
import {
  DraftTaken, type DraftBody, type DraftHead, type DraftLine, type DraftMarks, type DraftStore,
} from './draft-store.ts';

const DATABASE = 'elv-load-schedule';

/**
 * A browser that was ended and started again at once may not be able to open a database yet: it says so by an
 * UnknownError, which stands for what passes («transient reasons», Indexed Database API 3.0, Exceptions).
 */
const [TRIES, PAUSE_MILLISECONDS] = [20, 1000];

interface Tables extends DBSchema {
  heads: { key: number; value: DraftHead; indexes: { key: string } };
  /** By draft and number: the base is 0, the actions follow. */
  entries: { key: [number, number]; value: Snapshot | LoggedAction };
}

/** Keeps drafts in the browser's own database. */
export class IndexedDraftStore implements DraftStore {
  #opening: Promise<IDBPDatabase<Tables>> | undefined;
  #database: IDBPDatabase<Tables> | undefined;

  newId(): number {
    return Date.now() * 1000 + Math.floor(Math.random() * 1000);
  }

  async list(key: string): Promise<DraftHead[]> {
    return (await this.#open()).getAllFromIndex('heads', 'key', key);
  }

  async create(head: DraftHead, { base, actions }: DraftBody): Promise<void> {
    await this.#write(async (heads, entries) => {
      const all = [base, ...actions].map((entry, index) => () => entries.add(entry, [head.id, index]));
      await wholly(heads, [() => heads.add(head), ...all]);
    });
  }

  async append(head: DraftHead, lines: readonly DraftLine[]): Promise<void> {
    const before = await this.#write(async (heads, entries) => {
      const [kept] = await wholly(heads, [
        () => heads.get(head.id),
        ...lines.map(({ number, action }) => () => entries.add(action, [head.id, number])),
        () => heads.put(head),
      ]);
      return kept as DraftHead | undefined;
    }).catch((error: unknown) => {
      // An action of that number is there.
      throw error instanceof DOMException && error.name === 'ConstraintError' ? new DraftTaken() : error;
    });
    if (before !== undefined) return;
    await this.remove(head.id);
    throw new DraftTaken();
  }

  async read(id: number): Promise<DraftBody | undefined> {
    const [database, range] = [await this.#open(), entriesOf(id)];
    const [keys, found] = await Promise.all([database.getAllKeys('entries', range), database.getAll('entries', range)]);
    // What stands behind a gap does not follow from what stands before it.
    const [base, ...actions] = found.filter((_, index) => keys[index]![1] === index);
    return base === undefined ? undefined : { base: base as Snapshot, actions: actions as LoggedAction[] };
  }

  async mark(id: number, marks: DraftMarks, count?: number): Promise<void> {
    await this.#write(async (heads) => {
      const head = await heads.get(id);
      if (head === undefined) return;
      if (count === undefined || count === head.count) await heads.put({ ...head, ...marks });
    });
  }

  async remove(id: number): Promise<void> {
    await this.#write(async (heads, entries) => {
      await Promise.all([heads.delete(id), entries.delete(entriesOf(id))]);
    });
  }

  close(): void {
    void this.#opening?.then((database) => { database.close(); }, () => undefined);
    this.#opening = this.#database = undefined;
  }

  /** Opened again where the browser ended the connection, as when a person clears what pages have stored. */
  #open(): Promise<IDBPDatabase<Tables>> {
    if (this.#opening !== undefined) return this.#opening;
    const forget = () => {
      if (opening === this.#opening) this.#opening = this.#database = undefined;
    };
    const opening = this.#opening = opened(() => openDB<Tables>(DATABASE, 1, {
      upgrade(database) {
        database.createObjectStore('heads', { keyPath: 'id', autoIncrement: true }).createIndex('key', 'key');
        database.createObjectStore('entries');
      },
      // Newer software may change the tables; what this page still writes is then refused, and told.
      blocking: () => { this.close(); },
      terminated: forget,
    }));
    opening.then((database) => {
      if (opening === this.#opening) this.#database = database;
    }, forget);
    return opening;
  }

  async #write<Result>(task: (heads: Heads, entries: Entries) => Promise<Result>): Promise<Result> {
    // Nothing is waited for where the database is open: what is done after that may come too late.
    const database = this.#database ?? await this.#open();
    const transaction = database.transaction(['heads', 'entries'], 'readwrite');
    try {
      const result = await task(transaction.objectStore('heads'), transaction.objectStore('entries'));
      await transaction.done;
      return result;
    } catch (error) {
      throw await reasonOf(transaction, error);
    }
  }
}

async function opened<Database>(open: () => Promise<Database>): Promise<Database> {
  for (let left = TRIES - 1; left > 0; left -= 1) {
    try {
      return await open();
    } catch (error) {
      if (!(error instanceof DOMException && error.name === 'UnknownError')) throw error;
      await new Promise((resolve) => { setTimeout(resolve, PAUSE_MILLISECONDS); });
    }
  }
  return open();
}

type Both = ['heads', 'entries'];
type Heads = IDBPObjectStore<Tables, Both, 'heads', 'readwrite'>;
type Entries = IDBPObjectStore<Tables, Both, 'entries', 'readwrite'>;

/**
 * Asks for everything in one go and waits for nothing in between: what a page asks for while it is left is still done,
 * and what it would ask for after an answer is not.
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

/** The range of everything that belongs to a draft. */
function entriesOf(id: number): IDBKeyRange {
  return IDBKeyRange.bound([id, 0], [id, Infinity]);
}

/**
 * Ends a transaction that failed. @returns why: a full disk shows in the transaction, and not in what was asked of it.
 */
async function reasonOf(
  transaction: { abort(): void; readonly done: Promise<void>; readonly error: DOMException | null }, error: unknown,
): Promise<unknown> {
  try {
    transaction.abort();
  } catch { /* it has ended by itself */ }
  await transaction.done.catch(() => undefined);
  return transaction.error ?? error;
}
