import { spawn } from "node:child_process";
import { once } from "node:events";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { setTimeout as sleep } from "node:timers/promises";
import { expect, it } from "vitest";
import { coreInTemp } from "../../support/coreInTemp.ts";
import { memoryDumps } from "../../support/memoryDumps.ts";
import { roundWorks } from "../../support/roundWorks.ts";

const child = resolve(import.meta.dirname, "../../support/dockingChild.ts");

it("a docking is filed whole or not at all, whenever the power goes, and docked again nothing is doubled", async () => {
  const seen = new Set<number>();
  for (const delayMs of [0, 2, 4, 7, 12, 300]) {
    const folder = mkdtempSync(join(tmpdir(), "holdfast-docking-"));
    const setUp = await coreInTemp({ folder });
    const { gaugeId, spindleIds } = await roundWorks(setUp);
    const { today } = await setUp.call("rounds.due");
    const round = await setUp.call("rounds.save", {
      name: "r",
      on: today,
      made: "byHand",
      stops: spindleIds.map((spindleId) => ({ spindleId })),
    });
    await setUp.close();
    const readings = round.stops.map((stop, i) => ({
      number: i + 1,
      forceN: stop.expectedN!,
      unit: "kN" as const,
      clockMs: Date.now() - 60_000 + i,
      location: i + 1,
      held: true,
    }));
    const text = memoryDumps.list(readings, Date.now()).join("");

    const victim = spawn(process.execPath, [child, folder, round.roundId, gaugeId, text], {
      stdio: ["pipe", "pipe", "inherit"],
    });
    await once(victim.stdout, "data");
    victim.stdin.write("go\n");
    await sleep(delayMs);
    victim.kill("SIGKILL");
    await once(victim, "exit");

    const after = await coreInTemp({ folder });
    const count = async () =>
      (await after.call("spindles.list")).reduce((sum, row) => sum + row.checkCount, 0) - 3 * spindleIds.length;
    const filed = await count();
    expect([0, spindleIds.length]).toContain(filed);
    seen.add(filed);
    const view = await after.call("docking.read", { roundId: round.roundId, gaugeId, text });
    expect(view.takes).toHaveLength(filed === 0 ? spindleIds.length : 0);
    expect((await after.call("rounds.get", { roundId: round.roundId })).state).toBe(filed === 0 ? "open" : "done");
    await after.close();
    rmSync(folder, { recursive: true, force: true });
  }
  expect(seen.size).toBe(2); // killed early and late
}, 120_000);
