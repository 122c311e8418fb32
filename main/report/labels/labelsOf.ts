import type { Db } from "../../store/db.ts";
import { adapterList } from "../../store/records/adapters.ts";
import { gaugeList } from "../../store/records/gauges.ts";
import { spindleList } from "../../store/records/spindles.ts";
import { labelCode } from "./labelCode.ts";

export type Label = { readonly code: string; readonly name: string; readonly lines: readonly string[] };

/** Labels of what is in use, or of those named, by name. */
export function labelsOf(db: Db, what: "spindles" | "adapters" | "gauges", ids?: readonly string[]): Label[] {
  const wanted = (id: string, state: string) => (ids === undefined ? state === "inUse" : ids.includes(id));
  const named = { spindles, adapters, gauges }[what](db);
  return named
    .filter(({ id, state }) => wanted(id, state))
    .map(({ label }) => label)
    .sort((a, b) => a.name.localeCompare(b.name, undefined, { numeric: true }));
}

type Named = { readonly id: string; readonly state: string; readonly label: Label };

const spindles = (db: Db): Named[] =>
  spindleList(db).map(({ spindle: s }) => ({
    id: s.spindleId,
    state: s.state,
    label: {
      code: labelCode("spindle", s.spindleId),
      name: s.name,
      lines: [s.taper, s.machine === s.name ? s.area : s.machine],
    },
  }));

const adapters = (db: Db): Named[] =>
  adapterList(db).map((a) => ({
    id: a.adapterId,
    state: a.state,
    label: { code: labelCode("adapter", a.adapterId), name: a.name, lines: [a.taper, a.serial ?? ""] },
  }));

const gauges = (db: Db): Named[] =>
  gaugeList(db).map((g) => ({
    id: g.gaugeId,
    state: g.state,
    label: { code: labelCode("gauge", g.gaugeId), name: g.name, lines: [g.serial ?? ""] },
  }));
