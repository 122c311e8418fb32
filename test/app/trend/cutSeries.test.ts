import { describe, expect, it } from "vitest";
import { cutSeries } from "../../../app/trend/cutSeries.ts";
import { rippled } from "../../support/spindleHistory.ts";

const indices = (n: number) => Float64Array.from({ length: n }, (_, i) => i);
const cut = (values: readonly number[], starts: readonly number[] = []) =>
  cutSeries(indices(values.length), Float64Array.from(values), starts);

describe("cutSeries", () => {
  it("cuts at services whatever the values say", () => {
    expect(cut([5, 5, 5, 5, 5], [2]).stretches).toEqual([
      { from: 0, to: 2, startedBy: "first" },
      { from: 2, to: 5, startedBy: "service" },
    ]);
  });

  it("cuts at clear steps between services, in the numbering of the whole", () => {
    const values = rippled(30, 60, (i) => (i < 8 ? 17_000 : i < 20 ? 19_000 : 17_800));
    const { stretches, steps } = cut(values, [8]);
    expect(stretches).toEqual([
      { from: 0, to: 8, startedBy: "first" },
      { from: 8, to: 20, startedBy: "service" },
      { from: 20, to: 30, startedBy: "step" },
    ]);
    expect(steps).toMatchObject([{ lastBefore: 19, firstAfter: 20, clear: true }]);
  });

  it("leaves strays out of the search for steps and keeps them in their stretch", () => {
    const values = rippled(16, 40, (i) => (i === 4 ? 12_000 : i < 9 ? 18_000 : 17_000));
    const { strays, stretches } = cut(values);
    expect(strays).toEqual([4]);
    expect(stretches.map((s) => s.to)).toEqual([9, 16]);
  });

  it("starts with a service when one came before the first check, and takes several at one place as one", () => {
    expect(cut([1, 2, 3], [0, 2, 2]).stretches).toEqual([
      { from: 0, to: 2, startedBy: "service" },
      { from: 2, to: 3, startedBy: "service" },
    ]);
  });

  it("has no stretch without a value, and ignores a service after the last one", () => {
    expect(cut([]).stretches).toEqual([]);
    expect(cut([1, 2], [2]).stretches).toHaveLength(1);
  });
});
