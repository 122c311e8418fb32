import { describe, expect, it } from "vitest";
import { linePatternSchema } from "../../../app/gauge/linePattern.ts";

const least = { version: 1, terminator: "CRLF", fields: [{ field: "force" }, { field: "unit" }] };

describe("linePatternSchema", () => {
  it("fills in what a short pattern leaves out, and keeps it through JSON", () => {
    const pattern = linePatternSchema.parse(least);
    expect(pattern).toMatchObject({
      parity: "none",
      fill: false,
      massMeansForce: false,
      sends: "always",
      lines: [],
      others: [],
    });
    expect(linePatternSchema.parse(JSON.parse(JSON.stringify(pattern)))).toEqual(pattern);
  });

  it("takes a request with control characters", () => {
    const request = { text: "\u0002R\r", everyMs: 100, timeoutMs: 500 };
    expect(linePatternSchema.parse({ ...least, sends: "onRequest", request }).request).toEqual(request);
  });

  it.each([
    ["an unknown key", { ...least, colour: "green" }],
    ["a pattern of a later version", { ...least, version: 2 }],
    ["no force", { ...least, fields: [{ field: "unit" }] }],
    ["two forces", { ...least, fields: [{ field: "force" }, { field: "force" }] }],
    ["a field nobody knows", { ...least, fields: [{ field: "torque" }] }],
    ["text beyond ASCII", { ...least, fields: [{ field: "text", text: "µ" }, { field: "force" }] }],
    ["a unit nobody knows", { ...least, unit: "Nm" }],
    ["blanks from five to two", { ...least, fields: [{ field: "blanks", least: 5, most: 2 }, { field: "force" }] }],
    [
      "a checksum over itself",
      { ...least, fields: [{ field: "force" }, { field: "checksum", method: "xor", as: "HEX", first: 1, last: 2 }] },
    ],
    [
      "a checksum over more than the line",
      { ...least, fields: [{ field: "force" }, { field: "checksum", method: "xor", as: "HEX", first: 1, last: 9 }] },
    ],
    ["a gauge that is asked, without the question", { ...least, sends: "onRequest" }],
    ["a line end within a whole line", { ...least, lines: [{ text: "a\rb", means: "echo" }] }],
  ])("refuses %s", (_, wrong) => {
    expect(linePatternSchema.safeParse(wrong).success).toBe(false);
  });
});
