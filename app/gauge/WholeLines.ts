import { bytesOf } from "./compileFields.ts";
import type { LinePattern } from "./linePattern.ts";
import { matches } from "./takeField.ts";

export type WholeLineMeaning = LinePattern["lines"][number]["means"];

/** Lines a pattern knows by their whole text, blanks around them aside. */
export class WholeLines {
  readonly #lines: readonly { readonly bytes: Uint8Array; readonly means: WholeLineMeaning }[];

  constructor(lines: LinePattern["lines"]) {
    this.#lines = lines.map((line) => ({ bytes: bytesOf(line.text.trim()), means: line.means }));
  }

  find(bytes: Uint8Array, from: number, to: number): WholeLineMeaning | undefined {
    let start = from;
    let end = to;
    while (start < end && bytes[start] === BLANK) start += 1;
    while (end > start && bytes[end - 1] === BLANK) end -= 1;
    return this.#lines.find((line) => line.bytes.length === end - start && matches(line.bytes, bytes, start, end))
      ?.means;
  }
}

const BLANK = 0x20;
