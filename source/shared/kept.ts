/**
 * A list that grows at its end and never changes otherwise. What it was before goes on being that, though both share their
 * items: so adding costs the same at any length. Adding to an older state copies.
 */
export class Kept<Item> implements Iterable<Item> {
  readonly #items: Item[];
  readonly length: number;

  private constructor(items: Item[], length: number) {
    this.#items = items;
    this.length = length;
  }

  static readonly none: Kept<never> = new Kept<never>([], 0);

  add<Added>(item: Added): Kept<Item | Added> {
    const grows = this.#items.length === this.length && this.length > 0;
    const items: (Item | Added)[] = grows ? this.#items : this.#items.slice(0, this.length);
    items.push(item);
    return new Kept(items, this.length + 1);
  }

  get last(): Item | undefined {
    return this.#items[this.length - 1];
  }

  *[Symbol.iterator](): Iterator<Item> {
    for (let i = 0; i < this.length; i++) yield this.#items[i] as Item;
  }
}
