import type { RoundView, StopView } from "../../../../app/contract/roundViews.ts";
import { nextStop, type WalkStop } from "../../../../app/round/lead/nextStop.ts";

export type Walk = {
  /** The stop that is tagged; undefined where the tagged spindle is none of the round. */
  readonly at: StopView | undefined;
  /** From 1. */
  readonly place: number;
  /** Where it goes on after the one that is tagged. */
  readonly next: StopView | undefined;
  readonly done: number;
  readonly putOff: number;
  readonly leftOut: number;
};

/** How far a round is, seen from the spindle that is tagged. */
export function walkOf({ stops }: RoundView, spindleId: string | undefined): Walk {
  const at = stops.findIndex((stop) => stop.spindleId === spindleId);
  const walk = stops.map(
    (stop, i): WalkStop => ({
      spindleId: stop.spindleId,
      retired: stop.retired,
      done: stop.done != null || i === at, // as if this one were filed
      passed: stop.passed?.as,
    }),
  );
  const next = nextStop(walk, spindleId);
  const open = stops.filter((stop) => stop.done == null && !stop.retired);
  return {
    at: stops[at],
    place: at + 1,
    next: next === undefined ? undefined : stops[next],
    done: stops.filter((stop) => stop.done != null).length,
    putOff: open.filter((stop) => stop.passed?.as === "later").length,
    leftOut: open.filter((stop) => stop.passed?.as === "leftOut").length,
  };
}
