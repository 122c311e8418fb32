import { createHash, randomBytes } from "node:crypto";

const CODE_LIFE_MS = 60_000;
const MAX_TOKENS = 64;

/**
 * Who may talk to the loopback host. A one-time code (60 s) travels in the fragment of the address that is opened; a page
 * exchanges it for a token of 256 bits. Only hashes of tokens are kept, so the file that lets a page survive a
 * restart of the host gives nobody else a token.
 */
export class Passes {
  readonly #now: () => number;
  readonly #codes = new Map<string, number>(); // hash of code -> good until
  readonly #tokens: Set<string>;

  constructor(now: () => number, tokenHashes: readonly string[]) {
    this.#now = now;
    this.#tokens = new Set(tokenHashes);
  }

  newCode(): string {
    const code = randomBytes(16).toString("base64url");
    this.#codes.set(hash(code), this.#now() + CODE_LIFE_MS);
    return code;
  }

  /** A token for a good code; the code is used up. Undefined: wrong, used, or too late. */
  exchange(code: string): string | undefined {
    const key = hash(code);
    const until = this.#codes.get(key);
    this.#codes.delete(key);
    for (const [old, end] of this.#codes) if (end < this.#now()) this.#codes.delete(old);
    if (until === undefined || until < this.#now()) return undefined;
    const token = randomBytes(32).toString("base64url");
    this.#tokens.add(hash(token));
    for (const oldest of this.#tokens) {
      if (this.#tokens.size <= MAX_TOKENS) break;
      this.#tokens.delete(oldest);
    }
    return token;
  }

  /** Hashes are looked up, never compared byte by byte: timing tells nothing of the token. */
  holds(token: unknown): boolean {
    return typeof token === "string" && this.#tokens.has(hash(token));
  }

  get tokenHashes(): readonly string[] {
    return [...this.#tokens];
  }
}

const hash = (text: string) => createHash("sha256").update(text).digest("hex");
