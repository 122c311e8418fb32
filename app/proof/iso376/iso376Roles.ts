import type { LoadPoint, ProofSeries } from "../data/seriesOf.ts";

/** Which series plays which part in the method. */
export type Iso376Roles = {
  /** The first rising series of each mounting position (X1, X3, X5). */
  readonly rotated: readonly ProofSeries[];
  /** Two rising series without a turn between them (X1, X2); undefined where no position has two. */
  readonly repeated: readonly [ProofSeries, ProofSeries] | undefined;
  /** Falling series, each with the rising one at its own position. */
  readonly falling: readonly { readonly up: ProofSeries; readonly down: readonly LoadPoint[] }[];
};

/** Falling loads that were written down as a run of their own belong to the last rising series of their position. */
export function iso376Roles(series: readonly ProofSeries[]): Iso376Roles {
  const rising = series.filter((s) => s.up.length > 0);
  const byPosition = Map.groupBy(
    rising.filter((s) => s.positionDeg !== undefined),
    (s) => s.positionDeg,
  );
  const twice = [...byPosition.values()].find((same) => same.length > 1);
  const falling = series
    .filter((s) => s.down.length > 0)
    .flatMap((s) => {
      const before = rising.filter((r) => r.positionDeg === s.positionDeg && series.indexOf(r) < series.indexOf(s));
      const up = s.up.length > 0 ? s : before.at(-1);
      return up === undefined ? [] : [{ up, down: s.down }];
    });
  const rotated = [...byPosition.values()].map((same) => same[0]!);
  return {
    rotated: rotated.length > 0 ? rotated : rising.slice(0, 1),
    repeated: twice === undefined ? undefined : [twice[0]!, twice[1]!],
    falling,
  };
}
