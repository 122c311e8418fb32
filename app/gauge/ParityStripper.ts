export type Parity = "even" | "odd" | "mark";

/** What stands in the stripped stream for a byte that broke its parity: no field matches it. */
export const brokenByte = 0x80;

/**
 * Takes the parity bit off bytes that were sent as seven bits and received as eight. A byte that breaks the parity
 * becomes `brokenByte`, so its line is rejected; when it was a line end by its seven bits, the line still ends there.
 */
export class ParityStripper {
  readonly #table: Uint8Array;
  readonly #clean = new Uint8Array(8192); // twice the block, for broken line ends take two places
  static readonly #block = 4096;

  readonly #crlf: boolean;
  #behindCr = false;

  /** @param crlf  lines end in both CR and LF: a broken byte behind a CR was the LF */
  constructor(parity: Parity, crlf = false) {
    this.#table = Uint8Array.from({ length: 256 }, (_, byte) => (fitsParity(byte, parity) ? byte & 0x7f : brokenByte));
    this.#crlf = crlf;
  }

  /** Hands the stripped chunk on in blocks; they are lent until `emit` returns. */
  strip(chunk: Uint8Array, emit: (clean: Uint8Array) => void): void {
    for (let from = 0; from < chunk.length; from += ParityStripper.#block) {
      const to = Math.min(chunk.length, from + ParityStripper.#block);
      let length = 0;
      for (let i = from; i < to; i += 1) {
        const byte = this.#table[chunk[i]!]!;
        this.#clean[length++] = byte;
        if (byte === brokenByte) {
          const meant = this.#behindCr ? LF : chunk[i]! & 0x7f;
          if (endsLine(meant)) this.#clean[length++] = meant;
        }
        this.#behindCr = this.#crlf && byte === CR;
      }
      emit(this.#clean.subarray(0, length));
    }
  }
}

/** Whether the eight bits of a byte are seven and this parity. */
export function fitsParity(byte: number, parity: Parity): boolean {
  if (parity === "mark") return byte > 0x7f;
  let ones = 0;
  for (let bits = byte; bits > 0; bits >>= 1) ones += bits & 1;
  return ones % 2 === (parity === "even" ? 0 : 1);
}

const LF = 0x0a;
const CR = 0x0d;
const ETX = 0x03;
const endsLine = (byte: number) => byte === LF || byte === CR || byte === ETX;
