import { describe, expect, it } from "vitest";
import { niceTicks } from "../../../renderer/chart/niceTicks.ts";
import { timeTicks } from "../../../renderer/chart/trend/timeTicks.ts";

describe("niceTicks", () => {
  it.each([
    [0, 20, 4, [0, 5, 10, 15, 20], 0],
    [13.2, 18.9, 6, [14, 15, 16, 17, 18], 0],
    [0, 1, 4, [0, 0.25, 0.5, 0.75, 1], 2],
    [0, 0.5, 5, [0, 0.1, 0.2, 0.3, 0.4, 0.5], 1],
  ])("marks %f to %f about %i times with round values", (low, high, wanted, values, decimals) => {
    const ticks = niceTicks(low, high, wanted);
    expect(ticks.values.map((v) => Number(v.toFixed(6)))).toEqual(values);
    expect(ticks.decimals).toBe(decimals);
  });

  it("has none for an empty span", () => {
    expect(niceTicks(5, 5, 4).values).toEqual([]);
  });
});

describe("timeTicks", () => {
  it("marks the years of a long history by their numbers", () => {
    const ticks = timeTicks(Date.UTC(2023, 5, 1), Date.UTC(2027, 5, 1), 4, "en-GB");
    expect(ticks.map(({ label }) => label)).toEqual(["2024", "2025", "2026", "2027"]);
  });

  it("marks the months of a short one, the year where it begins", () => {
    const ticks = timeTicks(Date.UTC(2026, 9, 15), Date.UTC(2027, 1, 15), 5, "en-GB");
    expect(ticks.map(({ label }) => label)).toEqual(["Nov", "Dec", "2027", "Feb"]);
  });

  it("stands on first days of months only, inside the span", () => {
    for (const { ms } of timeTicks(Date.UTC(2020, 1, 3), Date.UTC(2026, 7, 3), 7, "de-DE")) {
      expect(new Date(ms).getUTCDate()).toBe(1);
      expect(ms).toBeGreaterThanOrEqual(Date.UTC(2020, 1, 3));
    }
  });
});
