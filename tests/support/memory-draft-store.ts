import { DraftTaken, type DraftBody, type DraftHead, type DraftStore } from '../../components/drafts/draft-store.ts';
import type { LoggedAction } from '../../src/schedule/index.ts';

/** Keeps drafts in memory, as a browser keeps them: what it is given is copied. It can be made to fail. */
export class MemoryDraftStore implements DraftStore {
  /** What every writing is refused with. */
  fault: Error | undefined;
  /** How often something was written. */
  writes = 0;
  readonly heads = new Map<number, DraftHead>();
  readonly bodies = new Map<number, DraftBody>();
  #id = 0;

  async list(key: string): Promise<DraftHead[]> {
    return Promise.resolve([...this.heads.values()].filter((head) => head.key === key));
  }

  async create(head: Omit<DraftHead, 'id' | 'count' | 'ended'>, body: DraftBody): Promise<DraftHead> {
    await this.#write();
    const made = { ...head, id: this.#id += 1, count: body.actions.length, ended: false };
    this.heads.set(made.id, made);
    this.bodies.set(made.id, structuredClone(body));
    return made;
  }

  async append(head: DraftHead, actions: readonly LoggedAction[], at: number): Promise<DraftHead> {
    await this.#write();
    const kept = this.heads.get(head.id);
    if (kept?.count !== head.count) throw new DraftTaken();
    const made = { ...kept, at, count: kept.count + actions.length, ended: false };
    const body = this.bodies.get(head.id)!;
    this.bodies.set(head.id, { ...body, actions: [...body.actions, ...structuredClone(actions)] });
    this.heads.set(head.id, made);
    return made;
  }

  async read(id: number): Promise<DraftBody | undefined> {
    return Promise.resolve(structuredClone(this.bodies.get(id)));
  }

  async end(id: number, ended: boolean): Promise<void> {
    await this.#write();
    const head = this.heads.get(id);
    if (head !== undefined) this.heads.set(id, { ...head, ended });
  }

  async remove(id: number): Promise<void> {
    await this.#write();
    this.heads.delete(id);
    this.bodies.delete(id);
  }

  close(): void { /* nothing is open */ }

  async #write(): Promise<void> {
    // As a browser, it answers later.
    await Promise.resolve();
    if (this.fault !== undefined) throw this.fault;
    this.writes += 1;
  }
}
