import { describe, expect, it } from "vitest";
import { counterPlace, trendAxis } from "../../../app/trend/trendAxis.ts";

const DAY_MS = 86_400_000;
const checks = [1_000, 6_000, 11_000, 400, 5_400].map((counter, i) => ({
  atMs: 90 * i * DAY_MS,
  valueN: 18_000,
  counter,
}));

describe("the axis of tool changes after the counter began anew", () => {
  const { axis, x } = trendAxis(checks, "counter");
  const place = (days: number, counter: number) =>
    axis.kind === "counter" ? counterPlace(axis.restarts, days * DAY_MS, counter) : undefined;

  it("says where it did", () => {
    expect([...x]).toEqual([1_000, 6_000, 11_000, 11_400, 16_400]);
    expect(axis).toMatchObject({
      restarts: [{ lastMs: 180 * DAY_MS, lastCounter: 11_000, firstMs: 270 * DAY_MS, offset: 11_000 }],
    });
  });

  it("holds a service where the checks about it stand", () => {
    expect(place(100, 6_500)).toBe(6_500);
    expect(place(300, 2_000)).toBe(13_000);
  });

  it("tells by the counter itself on which side a service in between lies", () => {
    expect(place(200, 11_300)).toBe(11_300);
    expect(place(200, 100)).toBe(11_100);
  });

  it("leaves a counter that never began anew as it is", () => {
    const plain = trendAxis(checks.slice(0, 3), "counter").axis;
    expect(plain).toMatchObject({ restarts: [] });
    expect(counterPlace([], 0, 42)).toBe(42);
  });
});
