import { afterEach, describe, expect, it } from "vitest";
import { learnDump } from "../../../app/round/dump/learnDump.ts";
import { readDump } from "../../../app/round/dump/readDump.ts";
import { systemClock } from "../../../main/link/Clock.ts";
import { type Simulator, startSimulator } from "../../../main/link/simulated.ts";
import { tcpSource } from "../../../main/link/tcp.ts";
import { fetchMemory } from "../../../main/rounds/fetchMemory.ts";

let gauge: Simulator | undefined;
afterEach(async () => {
  await gauge?.close();
  gauge = undefined;
});

/** A simulated gauge with a few readings in its memory, and the way to it. */
async function withMemory(args: readonly string[], readings = 12) {
  gauge = await startSimulator({ args: ["--memory", "40", ...args] });
  for (let i = 0; i < readings; i += 1) {
    await gauge.command(`location ${i + 1}`);
    await gauge.command("store");
  }
  const { address } = gauge;
  return () =>
    fetchMemory({ kind: "tcp", ...address }, "DUMP\r", { clock: systemClock, makeSource: () => tcpSource(address) });
}
const read = (text: string) => readDump(text, learnDump(text).format!);

describe("a memory over the port", () => {
  it.each(["list", "columns"] as const)("is asked for and read whole, in the form %s", async (form) => {
    const fetchIt = await withMemory(["--sends", "onRequest", "--dump-format", form]);
    const reading = read(await fetchIt());
    expect(reading.records.map((r) => r.location)).toEqual(Array.from({ length: 12 }, (_, i) => String(i + 1)));
    expect(reading.incomplete).toBe(false);
  });

  it("is read out of live readings that never pause", async () => {
    const fetchIt = await withMemory(["--sends", "always", "--dump-format", "list", "--rate", "20"]);
    const reading = read(await fetchIt());
    expect(reading.records).toHaveLength(12);
    expect(reading.passedOver).toBeGreaterThan(0);
  });

  it("is found among many more live readings than it holds, and its end without a count is noticed", async () => {
    const counted = await withMemory(["--sends", "always", "--dump-format", "list", "--rate", "100"]);
    expect(read(await counted()).records).toHaveLength(12);
    await gauge!.close();
    const plain = await withMemory(["--sends", "always", "--dump-format", "columns", "--rate", "100"]);
    const startMs = performance.now();
    expect(read(await plain()).records).toHaveLength(12);
    expect(performance.now() - startMs).toBeLessThan(15_000);
  });

  it("is asked for again when lines were lost, and the fullest answer counts", async () => {
    const fetchIt = await withMemory(["--sends", "onRequest", "--dump-format", "list"]);
    await gauge!.command("loseLines 0.3");
    const reading = read(await fetchIt());
    expect(reading.records.length).toBeGreaterThan(5);
    if (reading.records.length < 12) expect(reading.incomplete).toBe(true);
    await gauge!.command("loseLines 0");
    expect(read(await fetchIt()).records).toHaveLength(12);
  });

  it("holds what fits in it and no more", async () => {
    const fetchIt = await withMemory(["--sends", "onRequest", "--dump-format", "list"], 45);
    expect(read(await fetchIt()).records).toHaveLength(40);
  });
}, 60_000);
