/** Lists longer than that are written in stretches. */
const STRETCH = 500;

/**
 * A value as JSON, in pieces that take some milliseconds each: a list of fifty thousand rows, written in one go, would
 * hold up the gauge. Put together they are what `JSON.stringify` writes.
 * @param value  a plain value that JSON can carry
 */
export function* jsonPieces(value: unknown): Generator<string> {
  if (Array.isArray(value) && value.length > STRETCH) {
    for (let from = 0; from < value.length; from += STRETCH) {
      const text = JSON.stringify(value.slice(from, from + STRETCH));
      yield (from === 0 ? "[" : ",") + text.slice(1, -1);
    }
    yield "]";
  } else if (isPlain(value) && Object.values(value).some((member) => typeof member === "object" && member !== null)) {
    let before = "{";
    for (const [name, member] of Object.entries(value)) {
      if (member === undefined) continue;
      yield `${before}${JSON.stringify(name)}:`;
      yield* jsonPieces(member);
      before = ",";
    }
    yield before === "{" ? "{}" : "}";
  } else yield JSON.stringify(value);
}

/** An object without a way of its own of being written. */
const isPlain = (value: unknown): value is Record<string, unknown> =>
  typeof value === "object" && value !== null && !Array.isArray(value) && !("toJSON" in value);
