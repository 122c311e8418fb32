import { type ChildProcess, spawn } from "node:child_process";
import { randomUUID } from "node:crypto";
import { once } from "node:events";
import { existsSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { createInterface } from "node:readline";
import { afterAll, afterEach, expect, it } from "vitest";
import type { Cycle } from "../../../app/cycle/Cycle.ts";
import { systemClock } from "../../../main/link/Clock.ts";
import { findSetting } from "../../../main/link/findSetting.ts";
import { sourceMaker } from "../../../main/link/makeSource.ts";
import { listPorts } from "../../../main/link/ports.ts";
import { recover } from "../../../main/link/recover.ts";
import { Session } from "../../../main/link/Session.ts";
import type { SessionSettings } from "../../../main/link/SessionTypes.ts";
import { serialSource } from "../../../main/link/serialPort.ts";
import { simulatorProgram } from "../../../main/link/simulated.ts";
import { usualPattern } from "../../support/gaugeLines.ts";
import { describeWithPty } from "../../support/ptyPair.ts";

const root = mkdtempSync(join(tmpdir(), "holdfast-pty-"));
afterAll(() => rmSync(root, { recursive: true }));
const started: ChildProcess[] = [];
afterEach(async () => {
  for (const child of started.splice(0)) {
    if (child.exitCode !== null) continue;
    child.kill();
    await once(child, "exit");
  }
});

const setting = { baud: 9_600, dataBits: 8, parity: "none", stopBits: 1 } as const;

/** The simulator on a pseudo-terminal; answers how to command it. */
async function gaugeAt(path: string, ...args: string[]) {
  const child = spawn(process.execPath, [simulatorProgram, "--pty", "--path", path, ...args], {
    stdio: ["pipe", "pipe", "inherit"],
  });
  started.push(child);
  const lines = createInterface({ input: child.stdout! })[Symbol.asyncIterator]();
  expect(JSON.parse((await lines.next()).value ?? "")).toEqual({ kind: "pty", path });
  return async (line: string) => {
    child.stdin!.write(`${line}\n`);
    const reply = JSON.parse((await lines.next()).value ?? "");
    expect(reply.ok).toBe(true);
    return reply;
  };
}

describeWithPty("a session on a real pseudo-terminal", () => {
  it("measures, loses the device, takes it up again, and its spool replays to the same", async () => {
    const path = join(root, "gauge");
    const command = await gaugeAt(path, "--seed", "8");
    const cycles: Cycle[] = [];
    const settings: SessionSettings = {
      sessionId: randomUUID(),
      source: { kind: "serial", path, setting },
      pattern: usualPattern,
      rateHz: 100,
      capacityN: 30_000,
    };
    const session = new Session(
      settings,
      {
        clock: systemClock,
        makeSource: sourceMaker(() => undefined),
        listPorts,
        spoolFolder: root,
        retryMs: 50,
        onFault: (c) => expect.unreachable(String(c)),
      },
      { changed: () => {}, readings: () => {}, cycle: (c) => cycles.push(c), gap: () => {} },
    );
    await session.open();
    await expect.poll(() => session.status().counters.readings, { timeout: 5_000 }).toBeGreaterThan(120);
    await command("clamp 16000");
    await new Promise((resolve) => setTimeout(resolve, 2_200));
    await command("release");
    await expect.poll(() => cycles.length, { timeout: 5_000 }).toBe(1);

    await command("clamp 16000");
    await new Promise((resolve) => setTimeout(resolve, 800));
    await command("unplug");
    await expect.poll(() => session.status().state, { timeout: 5_000 }).toBe("waiting");
    expect(session.status().problem?.code).toBe("portGone");
    expect(existsSync(path)).toBe(false);
    const { readings } = session.status().counters;
    await command("plug");
    await expect.poll(() => session.status().state, { timeout: 5_000 }).toBe("open");
    await expect.poll(() => session.status().counters.readings, { timeout: 5_000 }).toBeGreaterThan(readings + 20);
    await session.close();

    expect(Math.abs(cycles[0]!.settledN! - 16_000)).toBeLessThan(20);
    expect(cycles[0]!.flags).not.toContain("cut");
    expect(cycles.slice(1).every((c) => c.flags.includes("cut"))).toBe(true);
    expect(session.status().counters.gaps).toBe(1);
    const again = await recover(root, settings.sessionId);
    expect(JSON.stringify(again!.cycles.map((c) => c.cycle))).toBe(JSON.stringify(cycles));
  });

  it("finds the setting of a port by listening on it", async () => {
    const path = join(root, "unknown");
    await gaugeAt(path, "--format", "status", "--unit", "lbf", "--rate", "50");
    const found = await findSetting({
      makeSource: (tried) => serialSource({ path, setting: tried }),
      clock: systemClock,
      signal: new AbortController().signal,
    });
    // A pseudo-terminal has no line: every rate reads, so the first one tried is found.
    expect(found).toMatchObject({ kind: "found", setting });
  });
});
