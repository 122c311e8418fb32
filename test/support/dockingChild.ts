import { coreInTemp } from "./coreInTemp.ts";

/**
 * Opens a data file, reads a memory for its round and accepts it when told to: started by a test that kills it on the
 * way. Arguments: folder, round, gauge, memory.
 */
const [folder, roundId, gaugeId, text] = process.argv.slice(2) as [string, string, string, string];
const core = await coreInTemp({ folder });
const view = await core.call("docking.read", { roundId, gaugeId, text });
process.stdout.write("ready\n");
process.stdin.once("data", async () => {
  await core.call("docking.accept", {
    dockingId: view.dockingId,
    filings: view.visits.map((v) => ({
      spindleId: view.stops[v.stop!]!.spindleId,
      adapterId: null,
      takes: [...v.takes],
      factor: 1,
    })),
    leftOut: [],
    answers: [],
  });
  process.stdout.write("filed\n");
});
