import type { Works } from "../../../app/ledger/register.ts";
import type { Register } from "../../../main/import/checks/Register.ts";
import { plainLabel } from "../../../main/import/Twins.ts";
import type { FakeState } from "../fakeCore.ts";

/** What the fake's records say to a file of old checks: its spindles by name, and no history. */
export function recordsForImport(state: FakeState): Register {
  const spindle = new Map(state.spindles.map((row) => [plainLabel(row.spindle.name), row.spindle.spindleId]));
  const none: ReadonlyMap<string, string> = new Map();
  return {
    works: state.works as Works, // the fake keeps what it is given
    names: { spindle, adapter: none, gauge: none, operator: none },
    there: () => new Map(),
    baselineAtMs: () => undefined,
    limits: new Map(state.spindles.map((row) => [row.spindle.spindleId, row.spindle.limits])),
    imports: [],
    nowMs: Date.parse("2026-06-01T12:00:00.000Z"),
  };
}
