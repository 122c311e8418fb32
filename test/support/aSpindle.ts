import type { Spindle } from "../../app/ledger/register.ts";
import { idOf } from "./aCheck.ts";

/** A spindle of an invented works; `over` replaces members. */
export function aSpindle(over: Partial<Spindle> = {}): Spindle {
  return {
    spindleId: idOf(1),
    name: "Larch 3",
    machine: "Larch",
    area: "Hall B",
    taper: "hollow 63",
    limits: { minimumN: 18_000, nominalN: 24_000 },
    state: "inUse",
    ...over,
  };
}
