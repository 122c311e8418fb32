import { describe, expect, it } from "vitest";
import type { RouteStop } from "../../../../app/round/route/Route.ts";
import { routeOf } from "../../../../app/round/route/routeOf.ts";
import { AREA_WALK, CHANGE, stepCosts } from "../../../../app/round/route/stepCosts.ts";
import { invented } from "../../../support/aCheck.ts";

/** A works of `n` spindles over some areas and tapers, the numbering through the works or from 1 in each area. */
function works(n: number, seed: number): RouteStop[] {
  const next = invented(seed);
  const areas = 1 + Math.floor(next() * 4);
  const tools = 1 + Math.floor(next() * 4);
  return Array.from({ length: n }, (_, i) => ({
    spindleId: `s${i}`,
    machine: next() < 0.2 ? "twin" : `m${i}`,
    area: `area ${Math.floor(next() * areas)}`,
    order: next() < 0.1 ? undefined : Math.floor(next() * 3 * n),
    tool: `tool ${Math.floor(next() * tools)}`,
  }));
}

/** Every order tried: fewest changes first, then the shortest walk. */
function bruteForce(stops: readonly RouteStop[]): number {
  const cost = stepCosts(stops);
  const n = stops.length;
  let best = Number.POSITIVE_INFINITY;
  const walk = (last: number, left: readonly number[], sum: number) => {
    if (sum >= best) return;
    if (left.length === 0) best = sum;
    for (const next of left)
      walk(
        next,
        left.filter((i) => i !== next),
        last < 0 ? 0 : sum + cost[last * n + next]!,
      );
  };
  walk(-1, [...stops.keys()], 0);
  return best;
}

const total = (route: ReturnType<typeof routeOf>) => route.adapterChanges * CHANGE + route.walk;

describe("the order of a round", () => {
  it("is the best of all orders where every order can be tried", () => {
    for (let seed = 1; seed <= 60; seed += 1) {
      const stops = works(2 + (seed % 7), seed);
      const route = routeOf(stops);
      expect(route.found).toBe("exact");
      expect(total(route)).toBe(bruteForce(stops));
      expect([...route.sequence].sort((a, b) => a - b)).toEqual([...stops.keys()]);
    }
  });

  it("has as many changes as there are further adapters, never more", () => {
    const stops = works(200, 5);
    const route = routeOf(stops);
    expect(route.adapterChanges).toBe(new Set(stops.map((s) => s.tool)).size - 1);
  });

  it("is within 1.05 of the optimum when it is found by improving alone", () => {
    let worst = 1;
    for (let seed = 1; seed <= 120; seed += 1) {
      const stops = works(4 + (seed % 21), seed);
      const exact = routeOf(stops);
      const good = routeOf(stops, "good");
      expect(good.found).toBe("good");
      expect(good.adapterChanges).toBe(exact.adapterChanges);
      if (exact.found === "exact" && exact.walk > 0) worst = Math.max(worst, good.walk / exact.walk);
    }
    expect(worst).toBeLessThanOrEqual(1.05);
  });

  it("is the same each time, and is told how it was found", () => {
    const stops = works(60, 9);
    expect(routeOf(stops)).toEqual(routeOf(stops));
    expect(routeOf(works(200, 3)).found).toBe("good");
    expect(routeOf([])).toEqual({ sequence: [], found: "exact", adapterChanges: 0, walk: 0 });
  });

  it("walks a line from its lower end to its upper, and counts another area", () => {
    const at = (order: number, area: string) => ({
      spindleId: `${order}`,
      machine: `${order}`,
      area,
      order,
      tool: "t",
    });
    const route = routeOf([at(5, "b"), at(1, "a"), at(3, "a")]);
    expect(route.sequence).toEqual([1, 2, 0]);
    expect(route.walk).toBe(4 + AREA_WALK);
  });

  it("treats spindles of one machine as one place", () => {
    const stop = (spindleId: string, order: number) => ({ spindleId, machine: "twin", area: "a", order, tool: "t" });
    expect(routeOf([stop("left", 4), stop("right", 9)]).walk).toBe(0);
  });
});
