import * as z from "zod";
import { forceUnits } from "../quantity/forceUnits.ts";
import { controlNames } from "./controlCharacters.ts";

/** What a word in a line says. `other`: known, but of no consequence (net, gross, a channel's name). */
const meaning = z.enum(["stable", "moving", "overload", "underload", "lowBattery", "live", "held", "aside", "other"]);
export type WordMeaning = z.infer<typeof meaning>;

const printable = z.string().regex(/^[\x20-\x7e]+$/, "only printable ASCII");
const isAscii = (text: string) => [...text].every((c) => c.charCodeAt(0) < 0x80);
const wholeText = z
  .string()
  .min(1)
  .max(60)
  .refine((text) => isAscii(text) && !/[\r\n]/.test(text), "only ASCII, on one line");
const count = z.int().min(0).max(80);

/** How a number is written. Whatever the pattern does not allow, the line is rejected for. */
const numberForm = {
  /** `column`: one place for a blank, + or -; `after`: the sign stands behind the digits. */
  sign: z.enum(["maybe", "always", "column", "after"]).default("maybe"),
  /** The padding stands between sign and digits. */
  signGap: z.boolean().default(false),
  decimalMark: z.enum([".", ","]).optional(),
  /** Numbers below one may begin with the mark. */
  mayOmitZero: z.boolean().default(false),
  /** Counts of decimals that may stand; absent: any. */
  decimals: z.array(z.int().min(0).max(9)).min(1).max(10).optional(),
  /** The same for a unit whose counts differ. */
  decimalsOf: z.partialRecord(z.enum(forceUnits), z.array(z.int().min(0).max(9)).min(1)).optional(),
  /** Exact count of digits before the mark, for numbers filled with zeros. */
  wholeDigits: z.int().min(1).max(15).optional(),
  /** The mark may also move with the range, as long as there are this many digits in all. */
  digits: z.int().min(1).max(15).optional(),
  /** Places the number takes with its padding. */
  width: z.int().min(1).max(40).optional(),
  align: z.enum(["right", "left"]).default("right"),
  /** The width is the least, not the only one: the sample showed no longer number. */
  mayGrow: z.boolean().default(false),
  thousands: z.enum([" ", ",", "'", "."]).optional(),
  exponent: z.boolean().default(false),
};

const field = z.discriminatedUnion("field", [
  /** Exactly this text. */
  z.strictObject({ field: z.literal("text"), text: printable.max(40) }),
  /** One control character by its name in ECMA-6. */
  z.strictObject({ field: z.literal("control"), name: z.enum(controlNames) }),
  z.strictObject({ field: z.literal("blanks"), least: count, most: count }),
  /** One of these words; `optional`: or none. */
  z.strictObject({
    field: z.literal("status"),
    words: z.record(printable.max(24), meaning),
    optional: z.boolean().default(false),
  }),
  /** The force; `instead`: what stands in its place when there is none. */
  z.strictObject({
    field: z.literal("force"),
    ...numberForm,
    /** The figure is the greatest so far, whatever the words of the line say. */
    held: z.boolean().default(false),
    instead: z.record(printable.max(40), z.enum(["overload", "underload", "aside"])).default({}),
  }),
  /** One of these force units, or any; the line is read in the unit it names. */
  z.strictObject({
    field: z.literal("unit"),
    units: z.array(z.enum(forceUnits)).min(1).optional(),
    optional: z.boolean().default(false),
  }),
  /** A count of lines. */
  z.strictObject({ field: z.literal("counter"), digits: z.int().min(1).max(15).optional() }),
  /** The gauge's own time. `coarse`: its steps are longer than the time between lines, so it stamps none of them. */
  z.strictObject({
    field: z.literal("time"),
    unit: z.enum(["us", "ms", "s", "clock"]),
    decimalMark: z.enum([".", ","]).optional(),
    digits: z.int().min(1).max(15).optional(),
    coarse: z.boolean().default(false),
  }),
  /** Something of no use here: a further number, a word, a date, or hexadecimal digits. */
  z.strictObject({
    field: z.literal("ignored"),
    what: z.enum(["number", "word", "date", "hex", "any"]),
    width: z.int().min(1).max(40).optional(),
    /** Of a number. */
    decimalMark: z.enum([".", ","]).optional(),
  }),
  /** Over the bytes of the fields `first` to `last`, counted from 1; both inclusive. */
  z.strictObject({
    field: z.literal("checksum"),
    method: z.enum(["xor", "sum256", "negativeSum256", "digitSum10", "byteSum10", "luhn10", "weight31"]),
    as: z.enum(["hex", "HEX", "decimal3", "digit"]),
    /** The digit brings the sum to a multiple of ten instead of being its last digit. */
    complement: z.boolean().default(false),
    first: z.int().min(1).max(40),
    last: z.int().min(1).max(40),
  }),
]);
export type PatternField = z.infer<typeof field>;

const body = z.strictObject({
  version: z.literal(1),
  name: z.string().max(80).default(""),
  fields: z.array(field).min(1).max(40),
  /** Further forms a line may have: another reading (a held maximum between live ones), or nothing of use here. */
  others: z
    .array(z.strictObject({ means: z.enum(["reading", "aside"]), fields: z.array(field).min(1).max(40) }))
    .max(12)
    .default([]),
  /** `any`: CR, LF or both, empty lines do not count. `ETX` ends the line; further control characters before the next are skipped. */
  terminator: z.enum(["CR", "LF", "CRLF", "ETX", "any"]),
  /** Characters that follow ETX and belong to its line: a check of the frame. ETX is then one of the fields. */
  afterEnd: z.int().min(0).max(8).default(0),
  /** Set where eight bits were received but seven sent. */
  parity: z.enum(["none", "even", "odd", "mark"]).default("none"),
  /** NUL is sent as fill between lines and skipped (ECMA-6: it may be put in or taken out without a change of meaning). */
  fill: z.boolean().default(false),
  /** Whole lines that are no readings, compared without the blanks around them. */
  lines: z
    .array(
      z.strictObject({
        text: wholeText,
        means: z.enum(["echo", "status", "overload", "underload", "lowBattery"]),
      }),
    )
    .max(40)
    .default([]),
  /** The unit of numbers that come without one. */
  unit: z.enum(forceUnits).optional(),
  /** The user has said that kg, lb and the like mean a force on this gauge. */
  massMeansForce: z.boolean().default(false),
  /** Readings a second, where stamps or the user tell. */
  rateHz: z.number().positive().max(100_000).optional(),
  /** `onKey`: silence is no alarm. */
  sends: z.enum(["always", "onRequest", "onKey"]).default("always"),
  request: z
    .strictObject({
      text: z
        .string()
        .min(1)
        .max(40)
        .refine(
          (text) => [...text].every((c) => c.charCodeAt(0) < 0x80),
          "only ASCII; control characters as JSON escapes",
        ),
      everyMs: z.int().min(5).max(60_000),
      timeoutMs: z.int().min(5).max(60_000),
    })
    .optional(),
});

/**
 * How one gauge writes its lines: data that is stored, named, exported and kept with each check.
 * A line is read when every field in order matches and nothing is left over.
 */
export const linePatternSchema = body.superRefine((pattern, context) => {
  const refuse = (path: (string | number)[], message: string) => context.addIssue({ code: "custom", path, message });
  checkFields(pattern.fields, true, (i, message) => refuse(["fields", ...i], message));
  for (const [k, other] of pattern.others.entries()) {
    checkFields(other.fields, other.means === "reading", (i, message) =>
      refuse(["others", k, "fields", ...i], message),
    );
  }
  if (pattern.afterEnd > 0 && pattern.terminator !== "ETX") refuse(["afterEnd"], "only behind ETX");
  if (pattern.sends === "onRequest" && pattern.request === undefined)
    refuse(["request"], "what is asked for is missing");
});

/** What a schema of single fields cannot see: how they stand to each other. */
function checkFields(
  fields: readonly PatternField[],
  reads: boolean,
  refuse: (path: number[], message: string) => void,
): void {
  const forces = fields.filter((f) => f.field === "force").length;
  const bare = fields.some((f) => f.field === "status" && Object.values(f.words).includes("overload"));
  if (forces > 1 || (reads && forces === 0 && !bare)) refuse([], `a line has one force, here are ${forces}`);
  for (const [i, f] of fields.entries()) {
    if (f.field === "blanks" && f.least > f.most) refuse([i], "least is more than most");
    if (f.field !== "checksum") continue;
    if (f.first > f.last || f.last > fields.length) refuse([i], "the span leaves the line");
    if (f.first <= i + 1 && i + 1 <= f.last) refuse([i], "a checksum cannot cover itself");
  }
}

export type LinePattern = z.infer<typeof linePatternSchema>;
/** A pattern as it may be written by hand: what has a default can be left out. */
export type LinePatternInput = z.input<typeof linePatternSchema>;
