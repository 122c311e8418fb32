import type { DumpFormat } from "./DumpFormat.ts";
import { splitCells } from "./splitCells.ts";

const separators: readonly DumpFormat["separator"][] = [";", "\t", "|", ",", "blank"];

export type DumpShape = {
  readonly separator: DumpFormat["separator"];
  readonly rows: readonly (readonly string[])[];
  readonly head: readonly string[] | undefined;
};

/** A time or a date: what a memory keeps with a reading, and a gauge's live lines do not carry. */
const stamp = /\b\d{1,2}:\d\d\b|\b\d{1,4}[./-]\d{1,2}[./-]\d{1,4}\b/;
/** From so many lines on it is a list of them; and so much more they weigh than live lines that come in between. */
const LEAST_STAMPED = 3;
const STAMPED = 50;

/** The separator by which most lines have the same number of cells, some of them with digits. */
export function dumpShape(bodies: readonly string[]): DumpShape | undefined {
  let best: DumpShape | undefined;
  let bestScore = 0;
  for (const separator of separators) {
    const cut = bodies.map((body) => splitCells(body, separator));
    const counts = Map.groupBy(cut.keys(), (i) => cut[i]!.length);
    for (const [count, members] of counts) {
      const isRecord = (i: number) => cut[i]!.filter((cell) => /\d/.test(cell)).length >= Math.max(1, count / 2 - 0.5);
      const records = members.filter(isRecord);
      const hasForce = records.some((i) => cut[i]!.some((cell) => /\d[.,]\d|^\d+ ?[a-z]*N$|^\d{2,}$/i.test(cell)));
      const stamped = records.length >= LEAST_STAMPED && records.filter((i) => stamp.test(bodies[i]!)).length;
      // Blanks also lie inside cells: a mark between them is believed first.
      const believed = (separator === "blank" ? 0.75 : 1) * (stamped === records.length ? STAMPED : 1);
      const score = records.length * Math.sqrt(Math.min(count, 8)) * believed;
      if (records.length === 0 || count < 2 || !hasForce || score <= bestScore) continue;
      const first = records[0]!;
      const above = first > 0 && cut[first - 1]!.length === count ? cut[first - 1] : undefined;
      bestScore = score;
      best = { separator, rows: records.map((i) => cut[i]!), head: above };
    }
  }
  return best;
}
