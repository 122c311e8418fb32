import { z } from "zod";
import { baselineChoice, check, remeasureMark, replacement, stopRelease, voiding } from "./check.ts";
import { id, name, reasonText, strict } from "./fields.ts";
import { quickParse } from "./quickParse.ts";
import { adapter, gauge, operator, serviceEvent, spindle, storedPattern, works } from "./register.ts";
import { docking, round, storedDumpFormat } from "./round.ts";

/** A setting that affects a verdict and belongs to no record. */
const setting = strict({ key: z.string().min(1).max(80), value: z.json() });

/** A role given or taken, a restore, a merge: acts on the file itself. */
const act = strict({
  what: z.enum(["roleChanged", "restored", "merged", "pinSet"]),
  detail: z.string().max(500),
  operatorId: id.nullable(),
});

const imported = strict({
  importId: id,
  fileName: z.string().max(260),
  fileHash: z.string().regex(/^[0-9a-f]{64}$/),
  entries: z.number().int().min(0),
  reason: reasonText.optional(),
});

/** Kinds that later rooms fill (rounds, docking, proofs): their own schema refines the body. */
const open = z.looseObject({ name: name.optional() });

/**
 * Every kind of ledger entry and what its body must be. The chain is over the whole entry, so a kind's
 * schema may only grow by optional fields; a body once written must parse for ever.
 */
export const kinds = {
  works,
  spindle,
  adapter,
  gauge,
  linePattern: storedPattern,
  operator,
  check,
  serviceEvent,
  void: voiding,
  replacement,
  stopRelease,
  baselineChoice,
  remeasureMark,
  setting,
  act,
  import: imported,
  reference: open,
  dumpFormat: storedDumpFormat,
  proof: open,
  adjustment: open,
  plan: open,
  round,
  docking,
  attachment: open,
} as const;

export type Kind = keyof typeof kinds;
export type Body<K extends Kind> = z.infer<(typeof kinds)[K]>;

/** By kind, where bodies are many and large enough for it to matter. */
const quick: { readonly [K in Kind]?: (body: unknown) => Body<K> } = { check: quickParse(check) };

/** A body as its kind's schema reads it. @throws ZodError  it is not what the kind asks for */
export function parseBody<K extends Kind>(kind: K, body: unknown): Body<K> {
  const parse = quick[kind] as ((body: unknown) => Body<K>) | undefined; // the table pairs kind and body
  return parse?.(body) ?? (kinds[kind].parse(body) as Body<K>); // the schema of that kind
}
