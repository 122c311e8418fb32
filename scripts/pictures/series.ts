import type { Call } from "../../test/e2e/HoldfastProcess.ts";

const sleep = (ms: number) => new Promise<void>((done) => setTimeout(done, ms));

/** Three clampings at a spindle of the demo with the simulated gauge, the fourth still held. */
export async function clampThree(call: Call): Promise<void> {
  const gaugeId = (await call("gauges.list")).find(({ gauge }) => gauge.name === "Gauge 1")?.gauge.gaugeId;
  const spindle = (await call("spindles.list")).find((row) => row.spindle.name === "Mill 1")?.spindle;
  const adapter = (await call("adapters.list")).find((row) => row.adapter.taper === spindle?.taper)?.adapter;
  const operatorId = (await call("operators.list"))[1]?.operatorId;
  if (spindle === undefined || adapter === undefined || operatorId === undefined || gaugeId === undefined)
    throw new Error("the demo works has changed: Mill 1, its adapter, Gauge 1 or the second operator is missing");
  await call("link.open", { source: { kind: "simulated" }, gaugeId });
  const { draft } = await call("state.snapshot");
  const { seriesId } = draft;
  const tag = { spindleId: spindle.spindleId, adapterId: adapter.adapterId, gaugeId, operatorId };
  await call("series.tag", { seriesId, ...tag });
  await call("series.describe", { seriesId, spindleWarm: true });
  await sleep(3_000);
  for (let i = 0; i < 3; i += 1) {
    await call("simulated.command", { command: "clamp" });
    await sleep(3_200);
    await call("simulated.command", { command: "release" });
    await sleep(1_800);
  }
  await call("simulated.command", { command: "clamp" });
  await sleep(2_000);
}
