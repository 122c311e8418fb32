import { describe, expect, it } from "vitest";
import type { FleetView } from "../../../app/contract/recordViews.ts";
import { FleetInFile } from "../../../main/fleet/FleetInFile.ts";

describe("the ranking and due list of all spindles", () => {
  it("is worked out once, however many ask, and anew when something was filed", async () => {
    const { fleet, at, ran } = aFleet();
    const first = fleet.view();
    expect(fleet.view()).toBe(first);
    at.place = 2;
    expect(fleet.view()).not.toBe(first);
    expect(ran).toHaveLength(2);
  });

  it("is worked out anew on a new day, with that day's clock: what is overdue moves with it", async () => {
    const { fleet, at, ran } = aFleet();
    await fleet.view();
    at.day = "2026-03-02";
    at.nowMs = Date.UTC(2026, 2, 2, 6);
    await fleet.view();
    expect(ran).toEqual([{ nowMs: Date.UTC(2026, 2, 1, 6) }, { nowMs: Date.UTC(2026, 2, 2, 6) }]);
  });

  it("is tried again after it failed, and what was known before stays to hand", async () => {
    const { fleet, at, ran } = aFleet();
    const known = await fleet.view();
    at.place = 2;
    at.fails = true;
    await expect(fleet.view()).rejects.toThrow("no thread");
    expect(fleet.last).toBe(known);
    at.fails = false;
    expect(fleet.last).not.toBe(await fleet.view());
    expect(ran).toHaveLength(3);
  });
});

function aFleet() {
  const at = { place: 1, day: "2026-03-01", nowMs: Date.UTC(2026, 2, 1, 6), fails: false };
  const ran: unknown[] = [];
  const run = async (_: string, args: unknown): Promise<FleetView> => {
    ran.push(args);
    if (at.fails) throw new Error("no thread");
    return { rows: [], commonMode: [], like: [], due: [] };
  };
  const fleet = new FleetInFile({
    store: { lastPlace: () => at.place },
    jobs: { run: run as never }, // one job only is asked for
    now: () => at.nowMs,
    today: () => at.day,
  });
  return { fleet, at, ran };
}
