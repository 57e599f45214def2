import {
  DraftTaken, type DraftBody, type DraftHead, type DraftLine, type DraftMarks, type DraftStore,
} from '../../components/drafts/draft-store.ts';

/** Keeps drafts in memory, as a browser keeps them: what it is given is copied. It can be made to fail. */
export class MemoryDraftStore implements DraftStore {
  /** What every writing is refused with. */
  fault: Error | undefined;
  /** How often something was written. */
  writes = 0;
  /** While it is there, what is written waits in it for its turn, which the test gives in any order. */
  held: (() => void)[] | undefined;
  readonly heads = new Map<number, DraftHead>();
  readonly bodies = new Map<number, DraftBody>();
  #id = 0;

  async list(key: string): Promise<DraftHead[]> {
    return Promise.resolve([...this.heads.values()].filter((head) => head.key === key));
  }

  newId(): number {
    return this.#id += 1;
  }

  async create(head: DraftHead, body: DraftBody): Promise<void> {
    const copy = structuredClone(body);
    await this.#write();
    this.heads.set(head.id, head);
    this.bodies.set(head.id, copy);
  }

  async append(head: DraftHead, lines: readonly DraftLine[]): Promise<void> {
    const copies = structuredClone(lines);
    await this.#write();
    const body = this.bodies.get(head.id);
    if (body === undefined) throw new DraftTaken();
    const actions = [...body.actions];
    for (const { number, action } of copies) {
      if (actions[number - 1] !== undefined) throw new DraftTaken();
      actions[number - 1] = action;
    }
    this.bodies.set(head.id, { ...body, actions });
    this.heads.set(head.id, head);
  }

  async read(id: number): Promise<DraftBody | undefined> {
    return Promise.resolve(structuredClone(this.bodies.get(id)));
  }

  async mark(id: number, marks: DraftMarks, count?: number): Promise<void> {
    await this.#write();
    const head = this.heads.get(id);
    if (head === undefined) return;
    if (count === undefined || count === head.count) this.heads.set(id, { ...head, ...marks });
  }

  async remove(id: number): Promise<void> {
    await this.#write();
    this.heads.delete(id);
    this.bodies.delete(id);
  }

  close(): void { /* nothing is open */ }

  async #write(): Promise<void> {
    // As a browser, it answers later.
    await (this.held === undefined ? Promise.resolve() : new Promise<void>((resolve) => { this.held!.push(resolve); }));
    if (this.fault !== undefined) throw this.fault;
    this.writes += 1;
  }
}
