import { conditions } from "../../simulator/truth/conditions.ts";
import type { Score } from "../../simulator/truth/score.ts";
import { sweep, type Tally, tally } from "../../simulator/truth/sweep.ts";
import type { BenchRow } from "./BenchRow.ts";
import { hourRows } from "./cycles/hour.ts";
import { speedRows } from "./cycles/speed.ts";

const STREAMS_EACH = 85; // of 31 conditions: 2,635 streams, more than 20,000 cycles
const SEED = 20_260_000;

/** The numbers the cycles are held to: the truth bench by condition, speed, and an hour of the fastest gauge. */
export async function cyclesBench(): Promise<BenchRow[]> {
  const all: Score[] = [];
  process.stdout.write(`${heading}\n`);
  conditions.forEach((condition, i) => {
    const scores = sweep(condition, STREAMS_EACH, SEED + 100_003 * i);
    all.push(...scores);
    process.stdout.write(`${tableRow(tally(condition.name, scores))}\n`);
  });
  const total = tally("all", all);
  process.stdout.write(`${tableRow(total)}\n\n`);
  return [...truthRows(total), ...(await speedRows()), ...hourRows()];
}

const columns = [
  "cycles",
  "missed",
  "invented",
  "split",
  "joined",
  "settled",
  "peak",
  "start",
  "end",
  "zero",
  "95 %",
  "few",
  "flags",
  "wrong",
];
const heading = `${"".padEnd(26)}${columns.map((c) => c.padStart(9)).join("")}`;

function tableRow(t: Tally): string {
  const percent = (share: number) => (Number.isNaN(share) ? "-" : `${(100 * share).toFixed(2)}`);
  const cells = [
    t.cycles,
    t.missed,
    t.invented,
    t.split,
    t.joined,
    ...[
      t.settledWithin,
      t.peakWithin,
      t.startWithin,
      t.endWithin,
      t.zeroWithin,
      t.coverageMany,
      t.coverageFew,
      t.flagsFound,
      t.flagsWrong,
    ].map(percent),
  ];
  const flags = [
    ...Object.entries(t.missedFlags).map(([f, n]) => `-${f} ${n}`),
    ...Object.entries(t.wrongFlags).map(([f, n]) => `+${f} ${n}`),
  ];
  return `${t.name.padEnd(26)}${cells.map((c) => String(c).padStart(9)).join("")}  ${flags.join(" ")}`;
}

function truthRows(t: Tally): BenchRow[] {
  const astray = (1000 * (t.missed + t.split + t.joined)) / t.cycles;
  const least = (name: string, share: number, limit: number): BenchRow => ({
    name: `${name}, share within`,
    measured: 100 * share,
    limit,
    unit: "%",
    met: 100 * share >= limit,
  });
  return [
    { name: `streams with known truth`, measured: t.streams, limit: 2000, unit: "", met: t.streams >= 2000 },
    {
      name: `cycles in them, inside the sure domain`,
      measured: t.cycles,
      limit: 20_000,
      unit: "",
      met: t.cycles >= 20_000,
    },
    { name: "cycles invented", measured: t.invented, limit: 0, unit: "", met: t.invented === 0 },
    { name: "missed, split or joined", measured: astray, limit: 1, unit: "in 1,000", met: astray <= 1 },
    least("settled force to max(0.05 %, 3 standard errors)", t.settledWithin, 99.5),
    least("peak, where not coarse, to max(0.5 %, 3 x noise)", t.peakWithin, 99.5),
    least("start to two readings or 20 ms", t.startWithin, 99.5),
    least("end to two readings or 20 ms", t.endWithin, 99.5),
    {
      name: "true force inside the stated 95 % interval, 30 and more readings that count",
      measured: 100 * t.coverageMany,
      limit: 93,
      unit: "%",
      met: t.coverageMany >= 0.93 && t.coverageMany <= 0.97,
      note: "93 to 97",
    },
    { ...least("true force inside the stated 95 % interval, fewer", t.coverageFew, 93) },
    { ...least("", t.flagsFound, 99), name: "each flag found, the one missed most" },
    {
      name: "each flag wrong, the one wrong most",
      measured: 100 * t.flagsWrong,
      limit: 0.5,
      unit: "%",
      met: t.flagsWrong <= 0.005,
    },
  ];
}

if (import.meta.main) {
  for (const row of await cyclesBench())
    process.stdout.write(
      `${row.met ? "met    " : "NOT MET"} ${row.name}: ${row.measured.toPrecision(5)} ${row.unit} (${row.limit}) ${row.note ?? ""}\n`,
    );
}
