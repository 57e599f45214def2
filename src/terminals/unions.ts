/** Things that are joined step by step, and which of them hang together. */
export class Unions<Thing> {
  readonly #parent = new Map<Thing, Thing>();

  join(one: Thing, other: Thing): void {
    this.#parent.set(this.of(one), this.of(other));
  }

  /** The one that stands for all that hang together with this one. */
  of(thing: Thing): Thing {
    let root = thing;
    while (this.#before(root) !== root) root = this.#before(root);
    for (let at = thing; at !== root;) {
      const next = this.#before(at);
      this.#parent.set(at, root);
      at = next;
    }
    return root;
  }

  #before(thing: Thing): Thing {
    return this.#parent.get(thing) ?? thing;
  }
}
