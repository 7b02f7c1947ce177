/** All that a log's file should hold, kept in memory. Adding to it costs what is added, on the average. */
export class HeldBytes {
  /** With room to grow; the first `#length` bytes count. */
  #room: Uint8Array;
  #length: number;

  constructor(content: Uint8Array) {
    this.#room = content;
    this.#length = content.length;
  }

  get length(): number {
    return this.#length;
  }

  add(bytes: Uint8Array): void {
    const length = this.#length + bytes.length;
    if (length > this.#room.length) {
      const roomier = new Uint8Array(Math.max(4096, length * 2));
      roomier.set(this.part(0));
      this.#room = roomier;
    }
    this.#room.set(bytes, this.#length);
    this.#length = length;
  }

  part(from: number, through = this.#length): Uint8Array {
    return this.#room.subarray(from, through);
  }

  beginsWith(bytes: Uint8Array): boolean {
    return bytes.length <= this.#length && Buffer.compare(bytes, this.part(0, bytes.length)) === 0;
  }
}
