import { GaugeStream } from "../../../app/cycle/GaugeStream.ts";
import { linePatternSchema } from "../../../app/gauge/linePattern.ts";
import { Random } from "../../../simulator/physics/Random.ts";
import type { BenchRow } from "../BenchRow.ts";

const rateHz = 10_000;
const pieceS = 20;
const pieces = 180;

const pattern = linePatternSchema.parse({
  version: 1,
  terminator: "LF",
  unit: "N",
  fields: [{ field: "force", decimals: [0] }],
});

/** Twenty seconds of a gauge as it sends them: two clampings. */
function piece(): Uint8Array {
  const random = new Random(9);
  const lines: string[] = [];
  for (let i = 0; i < pieceS * rateHz; i += 1) {
    const t = (i / rateHz) % 10;
    const share = t < 4 ? 0 : t < 4.01 ? (t - 4) * 100 : t < 8 ? 1 : t < 8.05 ? (8.05 - t) * 20 : 0;
    lines.push(Math.round(15_000 * share + 10 * random.normal()).toString());
  }
  return Buffer.from(`${lines.join("\n")}\n`);
}

const megabytes = () => {
  const { heapUsed, arrayBuffers } = process.memoryUsage();
  return (heapUsed + arrayBuffers) / 2 ** 20;
};

/** An hour at 10 kHz, 36 million lines: the memory in use after each tenth of it, and the cycles found. */
export function hourRows(): BenchRow[] {
  const bytes = piece();
  let cycles = 0;
  const stream = new GaugeStream({ pattern, rateHz }, { cycle: () => (cycles += 1) });
  const used: number[] = [];
  const began = performance.now();
  for (let i = 0; i < pieces; i += 1) {
    for (let from = 0; from < bytes.length; from += 1 << 16) stream.push(bytes.subarray(from, from + (1 << 16)));
    if (i % 18 === 17) used.push(megabytes());
  }
  stream.end();
  const seconds = (performance.now() - began) / 1000;
  // Garbage comes and goes; what grows would be seen in the least of the later tenths against the first's.
  const growth = Math.min(...used.slice(5)) - Math.max(...used.slice(0, 2));
  return [
    { name: "an hour at 10 kHz: cycles found of 360", measured: cycles, limit: 360, unit: "", met: cycles === 360 },
    {
      name: "an hour at 10 kHz: growth of memory over it",
      measured: growth,
      limit: 5,
      unit: "MB",
      met: growth < 5,
      note: `${used.map((m) => m.toFixed(0)).join(", ")} MB in use after each tenth; ${seconds.toFixed(1)} s for 36,000,000 lines`,
    },
  ];
}
