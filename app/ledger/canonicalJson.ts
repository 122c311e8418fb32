/**
 * The one way to write a value as JSON (RFC 8785), so that equal values have equal bytes and a hash over them
 * means something: members sorted by UTF-16 code units, no blanks, numbers as ECMAScript prints them.
 * A member that is `undefined` is left out, as in JSON itself.
 *
 * The engine's own writer prints numbers and strings just as the RFC asks, and much faster than anything built on
 * top of it. So the value is only checked, and put in order where it is not.
 * @param value  null, booleans, finite numbers, well-formed strings, plain arrays and objects of these
 * @returns  text; its UTF-8 bytes are the canonical form
 * @throws TypeError  what JSON cannot carry: NaN and infinities, a lone surrogate, bigint, function, Date, Map
 * @see RFC 8785 (2020), sections 3.1 to 3.2
 */
export function canonicalJson(value: unknown): string {
  const ordered = inOrder(value);
  return ordered === UNRULY ? pieceByPiece(value) : JSON.stringify(ordered);
}

/** Said of a value with a name that keeps no place in an object: numerals list before all others, wherever they sort. */
const UNRULY = undefined;

/** The value itself where it is in order all the way down, else a copy that is; or `UNRULY`. */
function inOrder(value: unknown): unknown {
  if (typeof value !== "object" || value === null) return scalar(value);
  if (Array.isArray(value)) return listInOrder(value);
  const record = plain(value);
  let before = "";
  let ordered = record;
  for (const name in record) {
    if (name <= before) return sorted(record);
    if (isUnruly(name)) return UNRULY;
    before = name;
    const member = record[name];
    if (member === undefined) continue;
    const itself = inOrder(member);
    if (itself === UNRULY) return UNRULY;
    if (itself === member) continue;
    if (ordered === record) ordered = { ...record };
    ordered[name] = itself;
  }
  return ordered;
}

function listInOrder(list: readonly unknown[]): unknown {
  let ordered = list;
  for (let i = 0; i < list.length; i += 1) {
    const itself = inOrder(list[i]);
    if (itself === UNRULY) return UNRULY;
    if (itself === list[i]) continue;
    if (ordered === list) ordered = list.slice();
    (ordered as unknown[])[i] = itself; // its own copy by now
  }
  return ordered;
}

function sorted(record: Record<string, unknown>): unknown {
  const copy: Record<string, unknown> = {};
  for (const name of Object.keys(record).sort()) {
    if (isUnruly(name)) return UNRULY;
    if (record[name] === undefined) continue;
    const itself = inOrder(record[name]);
    if (itself === UNRULY) return UNRULY;
    copy[name] = itself;
  }
  return copy;
}

/** Names that begin with a letter are the rule; anything else, a numeral or `__proto__`, goes the long way. */
function isUnruly(name: string): boolean {
  return name.charCodeAt(0) < UPPER_A || name.charCodeAt(0) === UNDERSCORE || !name.isWellFormed();
}

const UPPER_A = 0x41;
const UNDERSCORE = 0x5f;

function pieceByPiece(value: unknown): string {
  if (typeof value !== "object" || value === null) return JSON.stringify(scalar(value));
  if (Array.isArray(value)) return `[${Array.from(value, pieceByPiece).join(",")}]`;
  const record = plain(value);
  const names = Object.keys(record).filter((name) => record[name] !== undefined);
  const members = names.sort().map((name) => `${pieceByPiece(name)}:${pieceByPiece(record[name])}`);
  return `{${members.join(",")}}`;
}

function scalar(value: unknown): unknown {
  if (typeof value === "number" && Number.isFinite(value)) return value;
  if (typeof value === "string" && value.isWellFormed()) return value;
  if (value === null || typeof value === "boolean") return value;
  const what = typeof value === "string" ? "a lone surrogate" : `a ${typeof value} (${String(value)})`;
  throw new TypeError(`canonicalJson cannot write ${what}`);
}

function plain(object: object): Record<string, unknown> {
  const prototype: unknown = Object.getPrototypeOf(object);
  if (prototype === Object.prototype || prototype === null) return object as Record<string, unknown>; // just shown
  throw new TypeError(`canonicalJson cannot write a ${object.constructor?.name ?? "class instance"}`);
}
