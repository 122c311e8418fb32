import { describe, expect, it } from "vitest";
import astm from "../../../../app/proof/tables/astmE74.json" with { type: "json" };
import { readAstmE74Table } from "../../../../app/proof/tables/astmE74Table.ts";
import iso from "../../../../app/proof/tables/iso376.json" with { type: "json" };
import { readIso376Table } from "../../../../app/proof/tables/iso376Table.ts";

const swap = (i: number, change: object) => ({
  ...iso,
  classes: iso.classes.map((c, k) => (k === i ? { ...c, ...change } : c)),
});

describe("tables a laboratory may correct", () => {
  it("reads a corrected table", () => {
    expect(readIso376Table({ ...swap(3, { b: 0.45 }), fromMemory: false })).toMatchObject({
      fromMemory: false,
      classes: { 3: { b: 0.45 } },
    });
    expect(readAstmE74Table({ ...astm, factor: 2.5 }).factor).toBe(2.5);
  });

  it.each([
    ["a text", "table", /JSON object/],
    ["no classes", { ...iso, classes: [] }, /at least one class/],
    ["a limit of zero", swap(0, { b: 0 }), /"b" must be a number above zero, got 0/],
    ["a limit as text", swap(1, { v: "0.15" }), /"v".*"0.15"/],
    ["a misspelt field", swap(1, { bprime: 1 }), /no field "bprime"/],
    [
      "a missing field",
      { ...iso, standard: undefined, classes: iso.classes.map(({ v: _, ...rest }) => rest) },
      /"v" is missing/,
    ],
    ["classes that become narrower", swap(2, { fc: 0.01 }), /class 1 has a narrower fc/],
    ["a flag that is none", { ...iso, fromMemory: "no" }, /true or false/],
    ["a standard without a name", { ...iso, standard: "" }, /"standard" must be a text/],
  ])("refuses %s", (_, value, words) => {
    expect(() => readIso376Table(value)).toThrow(words);
  });

  it("refuses a probability of 1 and a degree nobody can fit", () => {
    expect(() => readAstmE74Table({ ...astm, degreeProbability: 1 })).toThrow(/below 1/);
    expect(() => readAstmE74Table({ ...astm, highestDegree: 40 })).toThrow(/up to 12/);
  });
});
