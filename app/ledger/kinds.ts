import { z } from "zod";
import { baselineChoice, check, remeasureMark, replacement, stopRelease, voiding } from "./check.ts";
import { id, name, reasonText, strict, unit } from "./fields.ts";
import { adjustment, plan, proof, reference } from "./proof.ts";
import { quickParse } from "./quickParse.ts";
import { adapter, gauge, operator, serviceEvent, spindle, storedPattern, works } from "./register.ts";
import { docking, round, storedDumpFormat } from "./round.ts";

/** A setting that affects a verdict and belongs to no record. */
const setting = strict({ key: z.string().min(1).max(80), value: z.json() });

/** A role given or taken, a restore, a merge: acts on the file itself. */
const act = strict({
  what: z.enum(["roleChanged", "restored", "merged", "pinSet", "limitsChanged", "nameErased"]),
  detail: z.string().max(500),
  operatorId: id.nullable(),
});

const imported = strict({
  importId: id,
  fileName: z.string().max(260),
  fileHash: z.string().regex(/^[0-9a-f]{64}$/),
  entries: z.number().int().min(0),
  reason: reasonText.optional(),
  what: z.enum(["spindles", "adapters", "gauges", "checks"]).optional(),
  /** Who imported it, where somebody was chosen. */
  operatorId: id.optional(),
  /** How the file was read; the next one with the same head is read so too unless somebody says otherwise. */
  reading: strict({
    columns: z.array(strict({ name: z.string().max(500), field: z.string().max(40).nullable() })).max(200),
    unit: unit.optional(),
    dateOrder: z.enum(["dayFirst", "monthFirst"]).optional(),
    sheet: z.string().max(120).optional(),
    /** Names of spindles and tools in the file, and what each was taken for. */
    names: z
      .array(
        strict({ thing: z.enum(["spindle", "adapter", "gauge"]), name: z.string().max(200), to: z.string().max(40) }),
      )
      .max(5_000)
      .optional(),
  }).optional(),
});

/** Kinds that a later room fills: its own schema refines the body. */
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
  reference,
  dumpFormat: storedDumpFormat,
  proof,
  adjustment,
  plan,
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
