import type { SpindleRow } from "../../../app/contract/recordViews.ts";

/** Orders of the list; `rank` is what to do next first. */
export const orders = ["rank", "name", "area", "taper", "due", "force", "measured"] as const;
export type Order = (typeof orders)[number];

/** The day by which to measure each spindle in use, by id; empty while it is not known. */
export type DueDates = ReadonlyMap<string, string>;

/** Rows in an order the user asked for; rows that lack what is sorted by come last, equal ones keep their rank. */
export function sortRows(ranked: readonly SpindleRow[], order: Order, due: DueDates): readonly SpindleRow[] {
  if (order === "rank") return ranked;
  const key = order === "due" ? (row: SpindleRow) => due.get(row.spindle.spindleId) : keys[order];
  return ranked.toSorted((a, b) => compare(key(a), key(b)));
}

type Key = string | number | undefined;

const keys: { readonly [O in Exclude<Order, "rank" | "due">]: (row: SpindleRow) => Key } = {
  name: ({ spindle }) => spindle.name,
  area: ({ spindle }) => filled(spindle.area),
  taper: ({ spindle }) => filled(spindle.taper),
  force: ({ last }) => last?.valueN ?? undefined,
  measured: ({ last }) => last?.measuredAtMs,
};

const filled = (text: string): Key => (text === "" ? undefined : text);

function compare(a: Key, b: Key): number {
  if (a === undefined || b === undefined) return Number(a === undefined) - Number(b === undefined);
  if (typeof a === "number" && typeof b === "number") return a - b;
  return collator.compare(String(a), String(b));
}

/** "Mill 9" before "Mill 10", umlauts beside their vowels. */
const collator = new Intl.Collator(undefined, { numeric: true });
