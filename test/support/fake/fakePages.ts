import type {
  CheckPage,
  CheckRow,
  FleetView,
  SpindlePage,
  SpindleRow,
  WaveformView,
} from "../../../app/contract/recordViews.ts";
import type { Spindle } from "../../../app/ledger/register.ts";

/** Pages of the fake core that hold more than rows. */
export function fakeTrend(_row: SpindleRow, _checks: readonly CheckRow[]): SpindlePage["trend"] {
  return undefined as unknown as SpindlePage["trend"]; // stands in until the trend's shape is agreed
}

export function fakeFleet(rows: readonly SpindleRow[]): FleetView {
  const order = ["stop", "act", "watch", "cannotTell", "good"];
  const ranked = rows.toSorted((a, b) => order.indexOf(a.verdict ?? "good") - order.indexOf(b.verdict ?? "good"));
  return {
    rows: ranked.map((row, i) => ({
      spindleId: row.spindle.spindleId,
      rank: i + 1,
      risk: 0.1,
      forecast: { state: "notWithinTenYears", limit: "warning", atMs: undefined, lowMs: undefined, highMs: undefined },
      why: { code: "level" },
    })),
    commonMode: [],
  };
}

export function fakeWaveform(cycleId: string, valueN: number): WaveformView {
  const t = Array.from({ length: 500 }, (_, i) => i / 100);
  const forceN = t.map((s) =>
    s < 0.3 ? 0 : s > 4.5 ? 0 : valueN * (1 - Math.exp(-(s - 0.3) / 0.03) * Math.cos((s - 0.3) * 38)),
  );
  return { cycleId, timed: true, t, forceN };
}

export function fakeCheckPage(row: CheckRow, _spindle: Spindle): CheckPage {
  return { row, hasWaveform: [], origin: "", seq: 1, hash: "0".repeat(64), today: undefined } as unknown as CheckPage; // filled when the page stands
}
