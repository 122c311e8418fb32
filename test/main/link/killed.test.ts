import { type ChildProcess, spawn } from "node:child_process";
import { randomUUID } from "node:crypto";
import { once } from "node:events";
import { mkdtempSync, readFileSync, rmSync, statSync, truncateSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import type { Cycle } from "../../../app/cycle/Cycle.ts";
import { markSeries, recover } from "../../../main/link/recover.ts";
import type { SessionSettings } from "../../../main/link/SessionTypes.ts";
import { listSpools } from "../../../main/link/spoolFolder.ts";
import { readSpool } from "../../../main/link/spoolReader.ts";
import { ByteServer } from "../../support/ByteServer.ts";
import { clampings, usualPattern } from "../../support/gaugeLines.ts";

const root = mkdtempSync(join(tmpdir(), "holdfast-killed-"));
afterAll(() => rmSync(root, { recursive: true }));

const childProgram = join(import.meta.dirname, "..", "..", "support", "sessionChild.ts");

function start(folder: string, settings: SessionSettings): { child: ChildProcess; cycles: Cycle[] } {
  const child = spawn(process.execPath, [childProgram, folder, JSON.stringify(settings)], {
    stdio: ["pipe", "pipe", "pipe"],
  });
  const cycles: Cycle[] = [];
  let rest = "";
  child.stdout!.on("data", (text) => {
    const lines = (rest + text).split("\n");
    rest = lines.pop()!;
    for (const line of lines) cycles.push(JSON.parse(line));
  });
  return { child, cycles };
}

const settingsFor = (port: number): SessionSettings => ({
  sessionId: randomUUID(),
  source: { kind: "tcp", host: "127.0.0.1", port },
  pattern: usualPattern,
  rateHz: 100,
  capacityN: 30_000,
});

/** Cycles that closed before the program stopped, without the one the stop cut. */
const whole = (cycles: readonly Cycle[]) => cycles.filter((c) => !c.flags.includes("cut"));

describe("a program killed in the middle of a series", () => {
  it("finds the same cycles again in the spool, bit for bit, and goes on", async () => {
    const folder = mkdtempSync(join(root, "k-"));
    const server = new ByteServer();
    await server.listen();
    const settings = settingsFor(server.port);
    const { child, cycles } = start(folder, settings);
    await server.connected();
    const { bytes, gauge } = clampings(4);
    const killAt = Math.round(bytes.length * 0.8); // in the middle of the third hold's release, and of a line
    for (let from = 0; from < killAt; from += 500)
      await server.send(bytes.subarray(from, Math.min(killAt, from + 500)));
    await expect.poll(() => cycles.length, { timeout: 10_000 }).toBe(3);
    child.kill("SIGKILL");
    await once(child, "exit");
    await server.close();

    const again = await recover(folder, settings.sessionId);
    expect(JSON.stringify(whole(again!.cycles.map((c) => c.cycle)))).toBe(JSON.stringify(cycles));
    expect(again!.settings).toEqual(settings);
    for (const [i, cycle] of cycles.entries()) {
      expect(Math.abs(cycle.settledN! - gauge.truth[i]!.settledN)).toBeLessThan(10);
    }
    expect(again!.lastWallMs).toBeGreaterThan(Date.now() - 60_000);
  });

  it("has in its spool every byte that was received, in order, up to the kill", async () => {
    const folder = mkdtempSync(join(root, "k-"));
    const server = new ByteServer();
    await server.listen();
    const settings = settingsFor(server.port);
    const { child } = start(folder, settings);
    await server.connected();
    const { bytes } = clampings(40);
    const sent = server.send(bytes);
    const spool = () => listSpools(folder)[0];
    await expect.poll(() => spool()?.bytes ?? 0, { interval: 1, timeout: 10_000 }).toBeGreaterThan(20_000);
    child.kill("SIGKILL");
    await once(child, "exit");
    await sent;
    await server.close();
    const kept: Buffer[] = [];
    const end = readSpool(readFileSync(spool()!.path), (r) => r.kind === "bytes" && kept.push(Buffer.from(r.bytes)));
    expect(end).toEqual({ wholeBytes: statSync(spool()!.path).size, damaged: false });
    const stream = Buffer.concat(kept);
    expect(stream.length).toBeGreaterThan(20_000);
    expect(stream.equals(bytes.subarray(0, stream.length))).toBe(true);
  });

  it("whose last second the power cut tore off gives what is whole, and takes a note after it", async () => {
    const folder = mkdtempSync(join(root, "k-"));
    const server = new ByteServer();
    await server.listen();
    const settings = settingsFor(server.port);
    const { child, cycles } = start(folder, settings);
    await server.connected();
    const { bytes: stream } = clampings(3);
    await server.send(stream.subarray(0, stream.length * 0.8));
    await expect.poll(() => cycles.length, { timeout: 10_000 }).toBe(2);
    await server.send(stream.subarray(stream.length * 0.8));
    await expect.poll(() => cycles.length, { timeout: 10_000 }).toBe(3);
    child.kill("SIGKILL");
    await once(child, "exit");
    await server.close();
    const { path, bytes } = listSpools(folder)[0]!;
    truncateSync(path, bytes - 7);
    expect(
      whole((await recover(folder, settings.sessionId))!.cycles.map((c) => c.cycle)).length,
    ).toBeGreaterThanOrEqual(2);
    await markSeries(folder, settings.sessionId, "series-1", "filed");
    const kinds: string[] = [];
    expect(readSpool(readFileSync(path), (r) => kinds.push(r.kind)).damaged).toBe(false);
    expect(kinds.at(-1)).toBe("series");
  });

  it("without a spool has nothing to offer", async () => {
    expect(await recover(join(root, "nowhere"), "none")).toBeUndefined();
    await markSeries(join(root, "nowhere"), "none", "series-1", "filed");
  });
});
