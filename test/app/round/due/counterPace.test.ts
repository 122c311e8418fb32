import { expect, it } from "vitest";
import { counterPace } from "../../../../app/round/due/counterPace.ts";

const notes = (...at: readonly (readonly [day: number, counter: number])[]) =>
  at.map(([day, counter]) => ({ day, counter }));

it("is the middle pace, of an even number the mean of the middle two", () => {
  expect(counterPace(notes([0, 0], [10, 1_000], [20, 3_000], [30, 6_000]))).toBe(200);
  expect(counterPace(notes([0, 0], [10, 1_000], [20, 3_000]))).toBe(150);
});

it("is not decided by one miskeyed counter, nor by a control that was replaced", () => {
  const miskeyed = notes([0, 1_000], [10, 2_000], [20, 30_000], [30, 4_000], [40, 5_000], [50, 6_000]);
  expect(counterPace(miskeyed)).toBe(100);
  const replaced = notes([0, 50_000], [10, 51_000], [20, 0], [30, 1_000]);
  expect(counterPace(replaced)).toBe(100);
});

it("is not told by two notes of one day, by one alone, or where nothing was changed", () => {
  expect(counterPace(notes([5, 100], [5, 900]))).toBeUndefined();
  expect(counterPace(notes([5, 100]))).toBeUndefined();
  expect(counterPace([])).toBeUndefined();
  expect(counterPace(notes([0, 500], [10, 500]))).toBeUndefined();
});
