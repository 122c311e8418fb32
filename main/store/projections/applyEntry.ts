import type { Entry } from "../../../app/ledger/entry.ts";
import type { Body, Kind } from "../../../app/ledger/kinds.ts";
import type { Db } from "../db.ts";
import { applyBaselineChoice, applyStopRelease } from "./acts.ts";
import { applyCheck, applyRemeasureMark, applyReplacement, applyVoid } from "./checkRow.ts";
import { applyProof } from "./proofRow.ts";
import { registering } from "./register.ts";
import { applyServiceEvent } from "./serviceEvent.ts";

type Apply<K extends Kind> = (db: Db, body: Body<K>, n: number) => void;

/** What each kind changes in the tables that screens read. Kinds without a projection are read from the ledger. */
const appliers: { readonly [K in Kind]?: Apply<K> } = {
  works: registering("works", () => "works"),
  spindle: registering("spindle", (b) => b.spindleId),
  adapter: registering("adapter", (b) => b.adapterId),
  gauge: registering("gauge", (b) => b.gaugeId),
  linePattern: registering("linePattern", (b) => b.patternId),
  operator: registering("operator", (b) => b.operatorId),
  setting: registering("setting", (b) => b.key),
  reference: registering("reference", (b) => b.referenceId),
  plan: registering("plan", (b) => b.planId),
  adjustment: registering("adjustment", (b) => b.adjustmentId),
  proof: applyProof,
  check: applyCheck,
  serviceEvent: applyServiceEvent,
  void: applyVoid,
  replacement: applyReplacement,
  remeasureMark: applyRemeasureMark,
  stopRelease: applyStopRelease,
  baselineChoice: applyBaselineChoice,
};

/** Brings the projections up to one entry. The same code serves accepting, merging and rebuilding. */
export function applyEntry(db: Db, entry: Entry, n: number): void {
  const apply = appliers[entry.kind] as Apply<Kind> | undefined; // the table pairs kind and body
  apply?.(db, entry.body, n);
}
