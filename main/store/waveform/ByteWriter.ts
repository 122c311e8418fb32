/** Bytes of a growing buffer, little-endian. */
export class ByteWriter {
  #bytes = new Uint8Array(4096);
  #view = new DataView(this.#bytes.buffer);
  #length = 0;

  byte(value: number): void {
    this.#room(1);
    this.#bytes[this.#length] = value;
    this.#length += 1;
  }

  float64(value: number): void {
    this.#room(8);
    this.#view.setFloat64(this.#length, value, true);
    this.#length += 8;
  }

  /** A whole number below 2 ** 32, seven bits a byte, low bits first. */
  varint(value: number): void {
    this.#room(5);
    let rest = value;
    while (rest > 0x7f) {
      this.#bytes[this.#length] = (rest & 0x7f) | 0x80;
      this.#length += 1;
      rest = Math.floor(rest / 128); // not >>>: the number may use all 32 bits
    }
    this.#bytes[this.#length] = rest;
    this.#length += 1;
  }

  /** The same with sign, small magnitudes first: 0, -1, 1, -2, 2 … */
  signed(value: number): void {
    this.varint(value < 0 ? -2 * value - 1 : 2 * value);
  }

  raw(bytes: Uint8Array): void {
    this.#room(bytes.length);
    this.#bytes.set(bytes, this.#length);
    this.#length += bytes.length;
  }

  done(): Uint8Array {
    return this.#bytes.subarray(0, this.#length);
  }

  #room(more: number): void {
    if (this.#length + more <= this.#bytes.length) return;
    const grown = new Uint8Array(Math.max(this.#bytes.length * 2, this.#length + more));
    grown.set(this.#bytes.subarray(0, this.#length));
    this.#bytes = grown;
    this.#view = new DataView(grown.buffer);
  }
}
