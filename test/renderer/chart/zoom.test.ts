import { describe, expect, it } from "vitest";
import { bringInSight, within, zoomAbout } from "../../../renderer/chart/trend/zoom.ts";

const whole = { from: -10, to: 90 };

describe("zoomAbout", () => {
  it("keeps the place under the pointer where it is", () => {
    const near = zoomAbout(whole, 15, 0.5, whole)!;
    expect(near).toEqual({ from: 2.5, to: 52.5 });
    expect((15 - near.from) / (near.to - near.from)).toBeCloseTo((15 - whole.from) / 100, 12);
  });
  it("is the whole again when it goes far enough back", () => {
    expect(zoomAbout({ from: 2.5, to: 52.5 }, 15, 2, whole)).toBeUndefined();
  });
  it("stays inside the whole, and comes no nearer than there is something to see", () => {
    const edge = zoomAbout({ from: 60, to: 90 }, 90, 1.5, whole)!;
    expect(edge.to).toBeLessThanOrEqual(90);
    let shown = whole;
    for (let i = 0; i < 40; i += 1) shown = zoomAbout(shown, 40, 0.5, whole) ?? whole;
    expect(shown.to - shown.from).toBeCloseTo(0.5, 9);
  });
});

describe("bringInSight", () => {
  it("moves no more than needed, and not at all for what is in sight", () => {
    expect(bringInSight({ from: 20, to: 40 }, 30, whole)).toEqual({ from: 20, to: 40 });
    const moved = bringInSight({ from: 20, to: 40 }, 60, whole)!;
    expect(moved.to - moved.from).toBeCloseTo(20, 12);
    expect(moved.to).toBeCloseTo(61.6, 12);
    expect(bringInSight({ from: 20, to: 40 }, -10, whole)!.from).toBe(-10);
  });
});

describe("within", () => {
  it("takes a stretch drawn from right to left as the same", () => {
    expect(within({ from: 50, to: 30 }, whole)).toEqual(within({ from: 30, to: 50 }, whole));
  });
});
