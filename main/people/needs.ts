import type { MethodName, Parsed } from "../../app/contract/methods.ts";
import type { Works } from "../../app/ledger/register.ts";
import type { Right } from "../../app/people/rights.ts";
import type { Db } from "../store/db.ts";
import { readAdapter } from "../store/records/adapters.ts";
import { readGauge } from "../store/records/gauges.ts";
import { readOperator } from "../store/records/operators.ts";
import { readSpindle } from "../store/records/spindles.ts";

/** What a need may look at. */
export type Ground = {
  readonly db: Db;
  readonly works: () => Works;
  readonly tagged: () => string | undefined;
};

type Needs = {
  readonly [M in MethodName]?: Right | ((input: Parsed<M>, ground: Ground) => Right | undefined);
};

/** What a call needs the right to; a call that is not here is open to everybody. */
export const needs: Needs = {
  "series.accept": "accept",
  "docking.accept": "accept",
  "checks.undo": "accept",
  "checks.void": "void",
  "proofs.markRemeasure": "void",
  "stop.release": "releaseStop",
  "baseline.choose": "limits",
  "spindles.save": (input, { db }) => {
    const before = input.spindleId === undefined ? undefined : readSpindle(db, input.spindleId)?.spindle;
    return differs(input, before ?? { limits: {} }, ["limits", "rule"]) ? "limits" : undefined;
  },
  "works.save": (input, { works }) =>
    differs(input, works(), ["rule", "cautionDrop", "actDrop", "assumptions"]) ? "limits" : undefined,
  /** Old checks may begin a history anew, and so become what later ones are compared with. */
  "register.import": ({ what }) => (what === "spindles" || what === "checks" ? "limits" : undefined),
  "adapters.save": (input, { db }) => {
    const before = input.adapterId === undefined ? undefined : readAdapter(db, input.adapterId);
    if (before === undefined) return input.assumed ? undefined : "proof";
    return differs(input, before, ["scale", "scaleUncertainty", "assumed", "version", "calibratedOn", "dueOn"])
      ? "proof"
      : undefined;
  },
  "gauges.save": (input, { db }) => {
    const before = input.gaugeId === undefined ? undefined : readGauge(db, input.gaugeId);
    return differs(input, before ?? {}, ["curve", "provedOn", "dueOn"]) ? "proof" : undefined;
  },
  "references.save": "proof",
  "proof.file": "proof",
  "proofs.saveTable": "proof",
  "adjustments.save": "proof",
  "adapters.factor": ({ file }) => (file ? "proof" : undefined),
  "records.import": "restore",
  "restore.swap": "restore",
  "operators.save": "people",
  "people.hide": "people",
  /** One's own entries, or by a keeper anybody's. */
  "people.export": ({ operatorId }, { tagged }) => (tagged() === operatorId ? undefined : "people"),
  /** One's own, with the old one or as the first; anybody else's is a keeper's. */
  "people.setPin": ({ operatorId, oldPin }, { db, tagged }) => {
    if (oldPin !== undefined) return undefined;
    const has = readOperator(db, operatorId)?.person?.pin !== undefined;
    return has || tagged() !== operatorId ? "people" : undefined;
  },
};

function differs<T extends object>(a: T, b: Partial<T>, keys: readonly (keyof T)[]): boolean {
  return keys.some((key) => JSON.stringify(sorted(a[key])) !== JSON.stringify(sorted(b[key])));
}

/** Members in one order: a page and the ledger need not write them alike. */
function sorted(value: unknown): unknown {
  if (typeof value !== "object" || value === null || Array.isArray(value)) return value;
  return Object.fromEntries(
    Object.entries(value)
      .filter(([, member]) => member !== undefined)
      .sort(([a], [b]) => (a < b ? -1 : 1)),
  );
}
