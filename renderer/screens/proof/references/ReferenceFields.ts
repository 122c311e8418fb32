import type { ForceUnit } from "../../../../app/quantity/forceUnits.ts";
import type { ReferenceDraft } from "./referenceDraft.ts";

/** What the fields of each kind of reference are given. */
export type ReferenceFields = {
  readonly draft: ReferenceDraft;
  readonly unit: ForceUnit;
  readonly errorAt: (field: string) => string | undefined;
  readonly onDraft: (part: Partial<ReferenceDraft>) => void;
};
