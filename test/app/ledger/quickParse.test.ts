import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { z } from "zod";
import { check } from "../../../app/ledger/check.ts";
import { parseBody } from "../../../app/ledger/kinds.ts";
import { quickParse } from "../../../app/ledger/quickParse.ts";
import { aCheck } from "../../support/aCheck.ts";

type Outcome = { json: string } | { refused: true };

function outcome(parse: () => unknown): Outcome {
  try {
    return { json: JSON.stringify(parse()) };
  } catch (cause) {
    expect(cause).toBeInstanceOf(z.ZodError);
    return { refused: true };
  }
}

/** Every place in a value, as the way to it. */
function placesIn(value: unknown, way: (string | number)[] = []): (string | number)[][] {
  if (typeof value !== "object" || value === null) return [way];
  return [
    way,
    ...Object.keys(value).flatMap((key) => placesIn((value as Record<string, unknown>)[key], [...way, key])),
  ];
}

function changed(body: unknown, way: readonly (string | number)[], to: (old: unknown) => unknown): unknown {
  if (way.length === 0) return to(body);
  const copy = structuredClone(body) as Record<string | number, unknown>;
  let at = copy;
  for (const key of way.slice(0, -1)) at = at[key] as Record<string | number, unknown>;
  const next = to(at[way.at(-1)!]);
  if (next === GONE) delete at[way.at(-1)!];
  else at[way.at(-1)!] = next;
  return copy;
}

const GONE = Symbol("gone");
const junk = [
  null,
  undefined,
  GONE,
  true,
  "",
  "text",
  0,
  -1,
  1.5,
  1e300,
  Number.NaN,
  Number.POSITIVE_INFINITY,
  [],
  {},
  [{}],
  "x".repeat(20_000),
];

describe("quickParse", () => {
  it("reads a check as its schema does, members in canonical order", () => {
    const body = aCheck({ seed: 3 });
    const quick = parseBody("check", body);
    expect(quick).toEqual(check.parse(body));
    expect(Object.keys(quick)).toEqual(Object.keys(quick).sort());
  });

  it("says of a body with anything changed anywhere what the schema says", () => {
    const body = aCheck({ seed: 4, cycleCount: 2 });
    const places = placesIn(body);
    fc.assert(
      fc.property(fc.constantFrom(...places), fc.constantFrom(...junk), fc.boolean(), (way, value, surplus) => {
        const to = (old: unknown) =>
          surplus && typeof old === "object" && old !== null ? { ...old, surplus: value } : value;
        const wrong = changed(body, way, to);
        expect(outcome(() => parseBody("check", wrong))).toEqual(outcome(() => check.parse(wrong)));
      }),
      { numRuns: 3_000 },
    );
  });

  it("follows a schema it does not know the parts of by asking it", () => {
    const schema = z.strictObject({
      trimmed: z.string().trim().min(2),
      either: z.union([z.number(), z.string()]),
      above: z.number().gt(3),
      even: z.number().refine((n) => n % 2 === 0),
      loose: z.looseObject({ a: z.number() }),
      fallback: z.number().default(7),
      many: z.array(z.strictObject({ on: z.iso.date() })).nonempty(),
    });
    const parse = quickParse(schema);
    const good = {
      trimmed: " ab ",
      either: "x",
      above: 4,
      even: 2,
      loose: { a: 1, b: 2 },
      many: [{ on: "2024-02-29" }],
    };
    expect(parse(good)).toEqual(schema.parse(good));
    for (const [key, value] of Object.entries({
      trimmed: " a ",
      above: 3,
      even: 3,
      loose: {},
      many: [],
      either: null,
    })) {
      expect(() => parse({ ...good, [key]: value })).toThrow(z.ZodError);
    }
    expect(() => parse({ ...good, many: [{ on: "2023-02-29" }] })).toThrow(z.ZodError);
  });
});
