/**
 * The one way to write a value as JSON (RFC 8785), so that equal values have equal bytes and a hash over them
 * means something: members sorted by UTF-16 code units, no blanks, numbers as ECMAScript prints them.
 * A member that is `undefined` is left out, as in JSON itself.
 * @param value  null, booleans, finite numbers, well-formed strings, plain arrays and objects of these
 * @returns  text; its UTF-8 bytes are the canonical form
 * @throws TypeError  what JSON cannot carry: NaN and infinities, a lone surrogate, bigint, function, Date, Map
 * @see RFC 8785 (2020), sections 3.1 to 3.2
 */
export function canonicalJson(value: unknown): string {
  if (typeof value === "string") return quoted(value);
  if (typeof value === "number") return numeral(value);
  if (value === null) return "null";
  if (typeof value === "boolean") return value ? "true" : "false";
  if (Array.isArray(value)) return list(value);
  if (typeof value === "object") return members(value);
  throw new TypeError(`canonicalJson cannot write a ${typeof value}`);
}

function numeral(value: number): string {
  if (!Number.isFinite(value)) throw new TypeError(`canonicalJson cannot write ${value}`);
  return `${value}`; // -0 prints as 0, as the RFC asks
}

function list(items: readonly unknown[]): string {
  let text = "[";
  for (let i = 0; i < items.length; i += 1) text += (i === 0 ? "" : ",") + canonicalJson(items[i]);
  return `${text}]`;
}

function members(object: object): string {
  const prototype: unknown = Object.getPrototypeOf(object);
  if (prototype !== Object.prototype && prototype !== null) {
    throw new TypeError(`canonicalJson cannot write a ${object.constructor?.name ?? "class instance"}`);
  }
  const record = object as Record<string, unknown>; // a plain object, just shown
  let text = "{";
  for (const key of sortedKeys(record)) {
    const value = record[key];
    if (value === undefined) continue;
    text += `${text.length > 1 ? "," : ""}${quoted(key)}:${canonicalJson(value)}`;
  }
  return `${text}}`;
}

/** Most objects come sorted already; a look is cheaper than a sort. The default order is by UTF-16 code units. */
function sortedKeys(record: Record<string, unknown>): string[] {
  const keys = Object.keys(record);
  for (let i = 1; i < keys.length; i += 1) if (keys[i - 1]! > keys[i]!) return keys.sort();
  return keys;
}

// biome-ignore lint/suspicious/noControlCharactersInRegex: they are what has to be escaped
const special = /["\\\u0000-\u001f\ud800-\udfff]/;

function quoted(text: string): string {
  if (!special.test(text)) return `"${text}"`;
  if (!text.isWellFormed()) throw new TypeError("canonicalJson cannot write a lone surrogate");
  return JSON.stringify(text);
}
