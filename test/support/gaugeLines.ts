import { type LinePattern, linePatternSchema } from "../../app/gauge/linePattern.ts";
import { type GaugeOptions, usualGauge } from "../../simulator/gauge/GaugeOptions.ts";
import { SimulatedGauge } from "../../simulator/gauge/SimulatedGauge.ts";

/** How the simulated gauge's usual lines are read: `    17.92 kN`, nine places. */
export const usualPattern: LinePattern = linePatternSchema.parse({
  version: 1,
  name: "number and unit",
  fields: [
    { field: "force", decimalMark: ".", decimals: [2], width: 9, instead: { OL: "overload" } },
    { field: "text", text: " " },
    { field: "unit" },
  ],
  terminator: "CRLF",
});

/** Bytes of a gauge that clamps `times` times, rest before, between and after. */
export function clampings(
  times: number,
  options: Partial<GaugeOptions> = {},
): { bytes: Buffer; gauge: SimulatedGauge } {
  const gauge = new SimulatedGauge({ ...usualGauge, ...options });
  const { rateHz } = gauge.options;
  const parts = [gauge.advance(4 * rateHz)];
  for (let i = 0; i < times; i += 1) {
    gauge.clamp();
    parts.push(gauge.advance(5 * rateHz));
    gauge.release();
    parts.push(gauge.advance(4 * rateHz));
  }
  return { bytes: Buffer.concat(parts), gauge };
}

/** Cuts bytes into chunks of the sizes a function gives. */
export function* chunksOf(bytes: Uint8Array, size: () => number): Iterable<Uint8Array> {
  for (let from = 0; from < bytes.length; ) {
    const to = Math.min(bytes.length, from + Math.max(1, size()));
    yield bytes.subarray(from, to);
    from = to;
  }
}
