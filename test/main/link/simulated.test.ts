import { randomUUID } from "node:crypto";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, afterEach, describe, expect, it } from "vitest";
import type { Source } from "../../../app/contract/linkViews.ts";
import type { Cycle } from "../../../app/cycle/Cycle.ts";
import { systemClock } from "../../../main/link/Clock.ts";
import { sourceMaker } from "../../../main/link/makeSource.ts";
import { listPorts } from "../../../main/link/ports.ts";
import { Session } from "../../../main/link/Session.ts";
import { type Simulator, startSimulator } from "../../../main/link/simulated.ts";
import { usualPattern } from "../../support/gaugeLines.ts";

const root = mkdtempSync(join(tmpdir(), "holdfast-simulated-"));
afterAll(() => rmSync(root, { recursive: true }));

const running: { close(): Promise<void> }[] = [];
afterEach(async () => {
  for (const one of running.splice(0).reverse()) await one.close();
});

async function measure(simulator: Simulator, source: Source) {
  const cycles: Cycle[] = [];
  const session = new Session(
    { sessionId: randomUUID(), source, pattern: usualPattern, rateHz: 100, capacityN: 30_000 },
    {
      clock: systemClock,
      makeSource: sourceMaker(() => simulator),
      listPorts,
      spoolFolder: root,
      retryMs: 50,
      onFault: (c) => expect.unreachable(String(c)),
    },
    { changed: () => {}, readings: () => {}, cycle: (c) => cycles.push(c), gap: () => {} },
  );
  await session.open();
  running.push(session);
  return { session, cycles };
}

const wait = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));

describe("the simulated gauge as a program beside this one", () => {
  it("clamps and releases on command, and the session reads the force it made", async () => {
    const simulator = await startSimulator({ args: ["--seed", "5"] });
    running.push(simulator);
    const { session, cycles } = await measure(simulator, { kind: "simulated" });
    expect(session.status().label).toBe("simulated gauge");
    await wait(1_500);
    expect(await simulator.command("clamp 17000")).toBe("clamped");
    await wait(2_500);
    await simulator.command("release");
    await expect.poll(() => cycles.length, { timeout: 5_000 }).toBe(1);
    const [truth] = await simulator.truth();
    expect(truth!.settledN).toBe(17_000);
    expect(Math.abs(cycles[0]!.settledN! - 17_000)).toBeLessThan(17_000 * 0.001);
  });

  it("is unplugged and plugged in again; the session resumes by itself", async () => {
    const simulator = await startSimulator();
    running.push(simulator);
    const { session } = await measure(simulator, { kind: "simulated" });
    await expect.poll(() => session.status().counters.readings, { timeout: 5_000 }).toBeGreaterThan(10);
    await simulator.command("unplug");
    await expect.poll(() => session.status().state).toBe("waiting");
    await simulator.command("plug");
    await expect.poll(() => session.status().state).toBe("open");
    const { readings, gaps } = session.status().counters;
    expect(gaps).toBe(1);
    await expect.poll(() => session.status().counters.readings).toBeGreaterThan(readings + 10);
  });

  it("refuses what it does not know, and says so", async () => {
    const simulator = await startSimulator();
    running.push(simulator);
    await expect(simulator.command("dance")).rejects.toMatchObject({ code: "simulatorFailed" });
    expect(await simulator.command("grease")).toContain("next clamping");
  });

  it("says why it cannot start, and that it has ended", async () => {
    await expect(startSimulator({ args: ["--format", "nope"] })).rejects.toThrow(/format must be one of/);
    await expect(startSimulator({ program: "/nowhere.ts" })).rejects.toMatchObject({ code: "simulatorFailed" });
    const simulator = await startSimulator();
    await simulator.close();
    await expect(simulator.command("clamp")).rejects.toMatchObject({ code: "simulatorFailed" });
  });
});
