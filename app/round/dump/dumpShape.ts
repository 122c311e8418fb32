import type { DumpFormat } from "./DumpFormat.ts";
import { splitCells } from "./splitCells.ts";

const separators: readonly DumpFormat["separator"][] = [";", "\t", "|", ",", "blank"];

export type DumpShape = {
  readonly separator: DumpFormat["separator"];
  readonly rows: readonly (readonly string[])[];
  readonly head: readonly string[] | undefined;
};

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
      // Blanks also lie inside cells: a mark between them is believed first.
      const score = records.length * Math.sqrt(Math.min(count, 8)) * (separator === "blank" ? 0.75 : 1);
      if (records.length === 0 || count < 2 || !hasForce || score <= bestScore) continue;
      const first = records[0]!;
      const above = first > 0 && cut[first - 1]!.length === count ? cut[first - 1] : undefined;
      bestScore = score;
      best = { separator, rows: records.map((i) => cut[i]!), head: above };
    }
  }
  return best;
}
