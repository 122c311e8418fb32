import type { Language } from "./Language.ts";

/** A text, or one with figures and names to be put in. */
type Word = string | ((...parts: never[]) => string);
export type Pairs = Record<string, readonly [english: Word, german: Word]>;
type Spoken<W> = W extends string ? string : W;
export type Words<P extends Pairs> = { readonly [K in keyof P]: Spoken<P[K][0]> };
export type Texts<P extends Pairs = Pairs> = Readonly<Record<Language, Words<P>>>;

/**
 * The texts of one place, each in both languages side by side, so that one without the other does not compile.
 * The answer holds one ready object a language: a component gets the same reference every time.
 */
export function inBoth<const P extends Pairs>(pairs: P): Texts<P> {
  const side = (at: 0 | 1) =>
    Object.fromEntries(Object.entries(pairs).map(([key, pair]) => [key, pair[at]])) as Words<P>; // same keys, one side
  return { en: side(0), de: side(1) };
}
