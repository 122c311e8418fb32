import type { CoreInTemp } from "./coreInTemp.ts";
import { fileTyped } from "./coreInTemp.ts";

/** Spindles well apart in force, two tapers, three checks each; one gauge, an adapter for each taper. */
export async function roundWorks(
  core: Pick<CoreInTemp, "call">,
  forcesKN: readonly number[] = [10, 14, 19, 25, 33, 44],
) {
  const gauge = await core.call("gauges.save", { name: "Gauge 1", capacityN: 100_000, state: "inUse" });
  for (const taper of ["HSK-A63", "SK 40"])
    await core.call("adapters.save", {
      name: `Adapter ${taper}`,
      taper,
      scale: 1,
      scaleUncertainty: 0.001,
      assumed: false,
      version: 1,
      state: "inUse",
    });
  const spindleIds: string[] = [];
  for (const [i, kN] of forcesKN.entries()) {
    const nominalN = kN * 1000;
    const row = await core.call("spindles.save", {
      name: `Mill ${i + 1}`,
      machine: `Mill ${i + 1}`,
      area: i < 3 ? "hall A" : "hall B",
      taper: i % 2 === 0 ? "HSK-A63" : "SK 40",
      limits: { minimumN: 0.8 * nominalN, warningN: 0.85 * nominalN, nominalN },
      order: i,
      state: "inUse",
    });
    spindleIds.push(row.spindle.spindleId);
    for (const share of [1, 0.996, 1.003])
      await fileTyped(core, row.spindle.spindleId, `${(kN * share).toFixed(2)} kN`);
  }
  return { gaugeId: gauge.gauge.gaugeId, spindleIds };
}
