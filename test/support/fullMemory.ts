import type { Parsed } from "../../app/contract/methods.ts";
import type { DockingView, RoundView } from "../../app/contract/roundViews.ts";
import { memoryDumps } from "./memoryDumps.ts";

/**
 * A full memory of the last quarter of an hour: three takes of each stop at its end, before them nothing but readings with
 * nothing clamped. The gauge's clock is an hour fast.
 */
export function fullMemory(stops: RoundView["stops"], count: number, nowMs: number): string {
  const takes = stops.flatMap((stop) => [stop, stop, stop]);
  const startMs = nowMs + 3_600_000 - 900_000;
  const readings = Array.from({ length: count }, (_, i) => {
    const k = i - (count - takes.length);
    const stop = takes[k];
    return {
      number: i + 1,
      forceN: stop === undefined ? 10 + (i % 7) * 10 : stop.expectedN! + (k % 3) * 10,
      unit: "kN" as const,
      clockMs: startMs + i * 10 + Math.max(0, k) * 30_000,
      location: stop === undefined ? 0 : Number(stop.location),
      held: true,
    };
  });
  return memoryDumps.list(readings, nowMs + 3_600_000).join("");
}

/** Accepted as it is proposed, every question answered so. */
export function acceptedAsShown(view: DockingView): Parsed<"docking.accept"> {
  const kept = view.visits.filter((v) => v.stop !== undefined && !v.leftOut);
  const filed = new Set(kept.flatMap((v) => v.takes));
  return {
    dockingId: view.dockingId,
    filings: kept.map((v) => ({
      spindleId: view.stops[v.stop!]!.spindleId,
      adapterId: null,
      takes: [...v.takes],
      factor: v.factor,
    })),
    leftOut: [...view.takes.keys()].flatMap((take) => (filed.has(take) ? [] : [{ take, why: "noClamping" }])),
    answers: [{ code: "noClamping", answer: "proposed", count: view.questions.length }],
  };
}

/** The day before, for a round that is docked at any hour. */
export const yesterday = (nowMs: number): string => new Date(nowMs - 86_400_000).toISOString().slice(0, 10);
