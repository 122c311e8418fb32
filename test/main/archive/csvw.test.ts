import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { csvwMetadata } from "../../../main/archive/csvwMetadata.ts";
import { allTables } from "../../../main/archive/tables.ts";
import { csvwFaults } from "../../support/csvwFaults.ts";

const published = JSON.parse(readFileSync(join(import.meta.dirname, "../../published/csvw-examples.json"), "utf8"));

describe("the description of the tables in an archive", () => {
  it("has no fault that the W3C's own examples let a checker find", () => {
    const ours = csvwMetadata(allTables, { program: "Holdfast", madeAt: "2026-03-04T09:00:00.000Z" });
    expect(csvwFaults(JSON.parse(JSON.stringify(ours)))).toEqual([]);
  });

  // The checker itself, by what the W3C published: without these it could find nothing and nobody would know.
  it("is checked by rules that take the W3C's published example", () => {
    expect(csvwFaults(published.inputs.treeOpsExt)).toEqual([]);
  });

  it.each([
    ["test046", /^group: datatype anySimpleType$/],
    ["test061", /dialect: doubleQuote$/],
    ["test090", /^table: no url$/],
    ["test093", /^table: property foo$/],
  ])("is checked by rules that find what is wrong with the W3C's %s", (name, fault) => {
    expect(csvwFaults(published.inputs[name])).toContainEqual(expect.stringMatching(fault));
  });
});
