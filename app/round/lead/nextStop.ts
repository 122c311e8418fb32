/** A stop as the walk sees it. */
export type WalkStop = {
  readonly spindleId: string;
  /** Measured on this round. */
  readonly done: boolean;
  /** Not in use any more. */
  readonly retired: boolean;
  /** Put off to come back to, or left out of the round. */
  readonly passed: "later" | "leftOut" | undefined;
};

/**
 * Where to go next: the first open stop after the one just left, round to the start, so that a walk that jumped ahead goes
 * on from where it stands; when none is open, the stops put off in the same turn, the one just left last of all.
 * @param from  spindle just measured or put off; undefined or no stop of the round: from the start
 * @returns  its place among the stops; undefined when nothing is left
 */
export function nextStop(stops: readonly WalkStop[], from: string | undefined): number | undefined {
  const start = stops.findIndex((stop) => stop.spindleId === from) + 1;
  const turn = stops.map((_, i) => (start + i) % stops.length);
  const left = turn.filter((i) => !stops[i]!.done && !stops[i]!.retired && stops[i]!.passed !== "leftOut");
  return left.find((i) => stops[i]!.passed === undefined) ?? left[0];
}
