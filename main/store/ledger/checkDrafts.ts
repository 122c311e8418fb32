import type { Entry } from "../../../app/ledger/entry.ts";
import { type Kind, parseBody } from "../../../app/ledger/kinds.ts";
import type { EntryDraft } from "../Store.ts";

/** A draft whose body has met its schema. */
export type CheckedDraft = { readonly kind: Kind; readonly body: Entry["body"] };

/** @throws ZodError  a body that is not what its kind asks for */
export function checkDrafts(batch: readonly EntryDraft[]): CheckedDraft[] {
  return batch.map(({ kind, body }) => ({ kind, body: parseBody(kind, body) }));
}
