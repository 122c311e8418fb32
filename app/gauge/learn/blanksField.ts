import type { PatternField } from "../linePattern.ts";
import { blanksBefore } from "./columns.ts";
import { established, shared } from "./established.ts";
import type { Cluster } from "./rows.ts";

/**
 * The blanks before a token, or with the count of tokens those at the line's end: none, a fixed text, or a range. A range
 * is padding of something whose length changes, so it may shrink further than the sample shows, and grow a little.
 */
export function blanksField(cluster: Cluster, index: number): PatternField[] {
  const seen = [...established(cluster.rows.map((row) => blanksBefore(row, index))).keys()];
  const least = Math.min(...seen);
  const most = Math.max(...seen);
  if (seen.length === 0 || most === 0) return [];
  const room = paddedNumber(cluster, index);
  if (room !== undefined) return [{ field: "blanks", least: index === 0 ? 0 : 1, most: room - 1 }];
  if (least === most) return [{ field: "text", text: " ".repeat(least) }];
  const fixed = least === most;
  return [{ field: "blanks", least: fixed ? least : Math.min(1, least), most: fixed ? most : most + 2 }];
}

/** The places a number takes with its padding, when it always ends in the same column and has more than a separator before it. */
function paddedNumber({ rows }: Cluster, index: number): number | undefined {
  if (rows[0]!.tokens[index]?.kind !== "number") return undefined;
  const room = shared(
    rows.map((row) => blanksBefore(row, index) + row.tokens[index]!.text.length),
    0.9,
  );
  return room !== undefined && rows.some((row) => blanksBefore(row, index) >= 2) ? room : undefined;
}
