import type { ForceUnit } from "../../quantity/forceUnits.ts";
import type { PatternField } from "../linePattern.ts";
import { established, shared } from "./established.ts";
import type { NumberText } from "./tokens.ts";

type ForceField = Extract<PatternField, { field: "force" }>;

/** Overload may show for the first time long after the sample; these are its usual ways (common practice, no source). */
const usualInstead: ForceField["instead"] = {
  OL: "overload",
  "O.L": "overload",
  OVL: "overload",
  OVER: "overload",
  OVERLOAD: "overload",
  "--": "overload",
};

/** The force column of a cluster, row by row. */
export type NumberColumn = {
  readonly numbers: readonly NumberText[];
  /** Length of the number with its sign. */
  readonly lengths: readonly number[];
  /** Blanks before and behind it, up to the next token or the line's end. */
  readonly before: readonly number[];
  readonly after: readonly number[];
  readonly units: readonly (ForceUnit | undefined)[];
  readonly startsLine: boolean;
  /** Something follows that every line must have: a number cut short cannot be taken for a whole one. */
  readonly followed: boolean;
  /** The checksum's span begins or ends right at the digits: the padding stays a field of its own. */
  readonly apart: boolean;
};

/** The field, and which of the blanks beside it are part of it. */
export type LearnedForce = { readonly field: ForceField; readonly takesBefore: boolean; readonly takesAfter: boolean };

/** How the numbers of a column are written: what all good ones share is asked of every later one. */
export function forceField(column: NumberColumn): LearnedForce {
  const { numbers } = column;
  const base = {
    field: "force",
    ...signForm(numbers),
    ...digitForm(column),
    held: false,
    instead: usualInstead,
  } as const;
  const room = padding(column);
  const field: ForceField = {
    ...base,
    align: room.align,
    mayGrow: room.mayGrow,
    ...(room.width === undefined ? {} : { width: room.width }),
  };
  return {
    field: room.column ? { ...field, sign: "column" } : field,
    takesBefore: room.takesBefore,
    takesAfter: room.takesAfter,
  };
}

function signForm(numbers: readonly NumberText[]): Pick<ForceField, "sign" | "signGap" | "exponent"> {
  const n = numbers.length;
  const count = (test: (number: NumberText) => boolean) => numbers.filter(test).length;
  const after = count((number) => number.signAfter) >= Math.max(2, 0.02 * n);
  const always = count((number) => number.sign !== "") >= 0.95 * n && count((number) => number.sign === "+") > 0;
  return {
    sign: after ? "after" : always ? "always" : "maybe",
    signGap: count((number) => number.sign !== "" && number.gap > 0) > 0.3 * count((number) => number.sign !== ""),
    exponent: count((number) => number.exponent !== "") > 0.5 * n,
  };
}

function digitForm(
  column: NumberColumn,
): Pick<
  ForceField,
  "decimalMark" | "mayOmitZero" | "decimals" | "decimalsOf" | "wholeDigits" | "digits" | "thousands"
> {
  const { numbers, units } = column;
  const mark = [...established(numbers.map((number) => number.mark)).keys()].find((m) => m !== "");
  const decimals = decimalsSeen(column);
  const filled = isFilled(numbers);
  // Cut lines may be many; zeros in front leave no doubt that the digits are always as many.
  const wholeDigits = filled && filledWidth(column) === undefined ? shared(wholesOf(numbers), 0.6) : undefined;
  const digits = shared(
    numbers.map((number) => number.whole.length + number.decimals.length),
    0.9,
  );
  const ranging = digits !== undefined && !filled && mark !== undefined && column.followed;
  return {
    ...(mark === undefined ? {} : { decimalMark: mark as "." | "," }), // "" was passed over
    mayOmitZero: numbers.filter((number) => number.whole === "").length > 0.02 * numbers.length,
    ...(decimals.length === 0 ? {} : { decimals }),
    ...decimalsOf(numbers, units, decimals),
    ...(wholeDigits === undefined ? {} : { wholeDigits }),
    ...(ranging ? { digits } : {}),
  };
}

/**
 * Counts of decimals that are meant. A number that stands last loses decimals when its line is cut, so a smaller count
 * than the usual one must there be frequent.
 */
function decimalsSeen({ numbers, followed }: NumberColumn): number[] {
  const seen = [...established(numbers.map((number) => number.decimals.length))];
  const usual = seen[0]?.[0] ?? 0;
  return seen
    .filter(([places, n]) => followed || places >= usual || n >= 0.2 * numbers.length)
    .map(([places]) => places)
    .sort();
}

/** Units that have their own counts of decimals, where the stream changes its unit. Others not seen may have any. */
function decimalsOf(
  numbers: readonly NumberText[],
  units: readonly (ForceUnit | undefined)[],
  all: readonly number[],
): Pick<ForceField, "decimalsOf"> {
  const seen = [...established(units.filter((unit) => unit !== undefined)).keys()];
  if (seen.length < 2) return {};
  const own = seen.map((unit) => {
    const places = numbers.filter((_, i) => units[i] === unit).map((number) => number.decimals.length);
    return [unit, [...established(places).keys()].sort()] as const;
  });
  return own.some(([, places]) => places.length < all.length) ? { decimalsOf: Object.fromEntries(own) } : {};
}

/** Zeros stand in front of a whole part of two digits or more: "0012", never "0.12". */
const isFilled = (numbers: readonly NumberText[]) =>
  numbers.filter((number) => /^0\d/.test(number.whole)).length > 0.1 * numbers.length;

const wholesOf = (numbers: readonly NumberText[]) => numbers.map((number) => number.whole.length);

/** Zeros up to a width that holds with any count of decimals and either sign: "0012.34" and "0001258". */
function filledWidth({ numbers, lengths }: NumberColumn): number | undefined {
  if (!isFilled(numbers)) return undefined;
  const kinds = numbers.map((number) => `${number.whole.length} ${number.sign !== ""}`);
  const seen = [...established(kinds).keys()];
  const own = seen.map((kind) =>
    shared(
      lengths.filter((_, i) => kinds[i] === kind),
      0.7,
    ),
  );
  const wholes = new Set(seen.map((kind) => kind.split(" ")[0]));
  return wholes.size > 1 && own.every((width) => width === own[0]) ? own[0] : undefined;
}

type Room = {
  align: "right" | "left";
  mayGrow: boolean;
  width?: number;
  column: boolean;
  takesBefore: boolean;
  takesAfter: boolean;
};
const noRoom: Room = { align: "right", mayGrow: false, column: false, takesBefore: false, takesAfter: false };

/**
 * The places a number takes. Numbers of different length that always end in the same column, or begin in it, are
 * padded to a width. Where the sample holds one length only, padding is told from a separator by its size, and the
 * width is taken for the least: a longer number may come.
 */
function padding(column: NumberColumn): Room {
  if (column.apart) return noRoom;
  const { lengths, before, after, numbers } = column;
  const filled = filledWidth(column);
  if (filled !== undefined) return { ...noRoom, width: filled };
  const bare = numbers.map((number, i) => lengths[i]! - (number.sign === "" ? 0 : 1) - number.gap);
  const right = widthOf(
    column,
    bare,
    lengths.map((length, i) => length + before[i]!),
  );
  const left = widthOf(
    column,
    bare,
    lengths.map((length, i) => length + after[i]!),
  );
  const varies = established(bare).size > 1;
  if (varies && right !== undefined) return { ...noRoom, width: right, takesBefore: true };
  if (varies && left !== undefined && new Set(after).size > 1)
    return { ...noRoom, align: "left", width: left, takesAfter: true };
  if (varies) return signColumn(column, bare) ? { ...noRoom, column: true, takesBefore: true } : noRoom;
  return oneLength(column, right);
}

/** The total that numbers of every length, with a sign and without, come to with their blanks; undefined where they differ. */
function widthOf({ numbers }: NumberColumn, bare: readonly number[], totals: readonly number[]): number | undefined {
  const kinds = numbers.map((number, i) => `${bare[i]} ${number.sign !== ""}`);
  const own = [...established(kinds).keys()].map((kind) =>
    shared(
      totals.filter((_, i) => kinds[i] === kind),
      0.7,
    ),
  );
  return own.every((width) => width === own[0]) ? own[0] : undefined;
}

function oneLength(column: NumberColumn, right: number | undefined): Room {
  const blanks = Math.min(...established(column.before).keys());
  const signed = established(column.numbers.map((number) => (number.sign === "" ? 0 : 1))).size > 1;
  if (right === undefined || !Number.isFinite(blanks)) return noRoom;
  if (isFilled(column.numbers))
    return signed && column.before.some((b) => b > 0) ? { ...noRoom, width: right, takesBefore: true } : noRoom;
  const most = Math.max(...established(column.before).keys());
  const padded = most >= 2 || (most === 1 && (column.startsLine || signed));
  return padded ? { ...noRoom, width: right, mayGrow: true, takesBefore: true } : noRoom;
}

/** One place for the sign: blank where it is plus, however long the number. */
function signColumn({ numbers, before }: NumberColumn, bare: readonly number[]): boolean {
  if (numbers.some((number) => number.gap > 0) || bare.length === 0) return false;
  const places = numbers.map((number, i) => before[i]! + (number.sign === "" ? 0 : 1));
  return shared(places, 0.95) === 1 && before.some((b) => b === 1) && numbers.some((number) => number.sign === "-");
}
