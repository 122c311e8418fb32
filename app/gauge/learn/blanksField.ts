import type { PatternField } from "../linePattern.ts";
import { blanksBefore } from "./columns.ts";
import { established } from "./established.ts";
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
  const tabs = cluster.rows.some((row) =>
    blanksOf(row.body, row.tokens[index - 1]?.end ?? 0, row.tokens[index]?.at).includes("\t"),
  );
  if (least === most && !tabs) return [{ field: "text", text: " ".repeat(least) }];
  const fixed = least === most;
  return [{ field: "blanks", least: fixed ? least : Math.min(1, least), most: fixed ? most : most + 2, tabs }];
}

const blanksOf = (body: string, from: number, to: number | undefined) => body.slice(from, to);
