/** Reads what `ByteWriter` wrote. Every read past the end throws, so a damaged waveform cannot run away. */
export class ByteReader {
  readonly #bytes: Uint8Array;
  readonly #view: DataView;
  #at = 0;

  constructor(bytes: Uint8Array) {
    this.#bytes = bytes;
    this.#view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  }

  byte(): number {
    const value = this.#bytes[this.#at];
    if (value === undefined) throw new RangeError("a waveform ends too soon");
    this.#at += 1;
    return value;
  }

  float64(): number {
    const value = this.#view.getFloat64(this.#at, true); // throws past the end
    this.#at += 8;
    return value;
  }

  varint(): number {
    let value = 0;
    let scale = 1;
    for (let i = 0; i < 5; i += 1) {
      const byte = this.byte();
      value += (byte & 0x7f) * scale;
      if (byte < 0x80) return value;
      scale *= 128;
    }
    throw new RangeError("a number in a waveform is too long");
  }

  signed(): number {
    const value = this.varint();
    return value % 2 === 1 ? -(value + 1) / 2 : value / 2;
  }

  raw(length: number): Uint8Array {
    if (this.#at + length > this.#bytes.length) throw new RangeError("a waveform ends too soon");
    const bytes = this.#bytes.slice(this.#at, this.#at + length);
    this.#at += length;
    return bytes;
  }
}
