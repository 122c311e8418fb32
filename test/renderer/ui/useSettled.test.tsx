import { act, renderHook } from "@testing-library/react";
import { afterEach, beforeEach, expect, it, vi } from "vitest";
import { useSettled } from "../../../renderer/ui/useSettled.ts";

type Props = { readonly value: string; readonly how?: "wait" | "atOnce" | "pass" };

const started = (first: Props) =>
  renderHook(({ value, how }: Props) => useSettled(value, 800, how), { initialProps: first });
const pass = (ms: number) => act(() => vi.advanceTimersByTime(ms));

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

it("gives a value once it has stood for the time, and none before", () => {
  const { result } = started({ value: "at rest" });
  pass(799);
  expect(result.current).toBeUndefined();
  pass(1);
  expect(result.current).toBe("at rest");
});

it("never gives what flickers, and waits anew after each change", () => {
  const { result, rerender } = started({ value: "at rest" });
  pass(800);
  for (const value of ["holding", "at rest", "holding"]) {
    rerender({ value });
    pass(500);
    expect(result.current).toBe("at rest");
  }
  pass(300);
  expect(result.current).toBe("holding");
});

it("gives at once what may not wait, and goes over what only passes", () => {
  const { result, rerender } = started({ value: "at rest" });
  pass(800);
  rerender({ value: "rising", how: "pass" });
  pass(5_000);
  expect(result.current).toBe("at rest");
  rerender({ value: "overload", how: "atOnce" });
  expect(result.current).toBe("overload");
});
