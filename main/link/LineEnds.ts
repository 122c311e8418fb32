/** Counts line ends in a stream: CR, LF, ETX or a run of them, so that CR LF is one. For showing a rate before anything is known of the lines. */
export class LineEnds {
  count = 0;
  #inEnd = true; // a stream may begin with one

  push(chunk: Uint8Array): void {
    for (const byte of chunk) {
      const isEnd = byte === 0x0a || byte === 0x0d || byte === 0x03;
      if (isEnd && !this.#inEnd) this.count += 1;
      this.#inEnd = isEnd;
    }
  }
}
