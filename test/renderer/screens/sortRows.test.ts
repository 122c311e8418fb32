import { describe, expect, it } from "vitest";
import type { SpindleRow } from "../../../app/contract/recordViews.ts";
import { type orders, sortRows } from "../../../renderer/screens/spindles/sortRows.ts";

const row = (name: string, over: { area?: string; valueN?: number; atMs?: number } = {}) =>
  ({
    spindle: { spindleId: name, name, area: over.area ?? "", taper: "" },
    last: over.valueN === undefined ? undefined : { valueN: over.valueN, measuredAtMs: over.atMs ?? 0 },
  }) as unknown as SpindleRow; // what is sorted by, no more

const ranked = Object.freeze([
  row("Mill 10", { area: "Hall B", valueN: 18_000, atMs: 3 }),
  row("Öltrop 1"),
  row("Mill 9", { area: "Hall A", valueN: 9_000, atMs: 7 }),
]);
const due = new Map([
  ["Mill 10", "2026-05-01"],
  ["Öltrop 1", "2026-01-01"],
]);
const names = (order: (typeof orders)[number]) => sortRows(ranked, order, due).map((r) => r.spindle.name);

describe("the order of the list", () => {
  it("leaves the ranking as it is", () => {
    expect(sortRows(ranked, "rank", due)).toBe(ranked);
  });

  it("sorts names by the numbers in them", () => {
    expect(names("name")).toEqual(["Mill 9", "Mill 10", "Öltrop 1"]);
  });

  it("puts what lacks the figure last", () => {
    expect(names("area")).toEqual(["Mill 9", "Mill 10", "Öltrop 1"]);
    expect(names("due")).toEqual(["Öltrop 1", "Mill 10", "Mill 9"]);
    expect(names("force")).toEqual(["Mill 9", "Mill 10", "Öltrop 1"]);
    expect(names("measured")).toEqual(["Mill 10", "Mill 9", "Öltrop 1"]);
  });

  it("keeps the rank among equals", () => {
    expect(names("taper")).toEqual(["Mill 10", "Öltrop 1", "Mill 9"]);
  });
});
