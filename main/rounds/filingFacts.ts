import type { Works } from "../../app/ledger/register.ts";
import { type DraftState, freshDraft } from "../bench/DraftState.ts";
import type { FormFacts } from "../bench/FormFacts.ts";
import { factsOf } from "../bench/factsOf.ts";
import type { Db } from "../store/db.ts";
import { worksDay } from "./worksDay.ts";

export type FilingTag = {
  readonly spindleId: string;
  readonly adapterId: string | null;
  readonly gaugeId: string | undefined;
  readonly operatorId?: string | undefined;
};

/** An empty series tagged for a docked value, and what the register says today of what it is tagged with. */
export function filingFacts(
  db: Db,
  works: Works,
  tag: FilingTag,
  atMs: number,
  seriesId = "",
): { readonly state: DraftState; readonly facts: FormFacts } {
  const { spindleId, adapterId, gaugeId, operatorId } = tag;
  const fresh = freshDraft(seriesId, { gaugeId, operatorId });
  const state = { ...fresh, tag: { spindleId, adapterId: adapterId ?? undefined, gaugeId, operatorId } };
  return { state, facts: factsOf(db, state, { works, resolutionN: undefined, today: worksDay(atMs, works.timeZone) }) };
}
