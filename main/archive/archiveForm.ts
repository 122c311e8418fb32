import { z } from "zod";

/** What an archive says of itself, in `archive.json`. A reader takes versions up to its own. */
export const ARCHIVE_VERSION = 1;
export const FORMAT = "holdfast-archive";
export const MANIFEST = "archive.json";
export const WAVEFORMS = "waveforms.jsonl";

const hash = z.string().regex(/^[0-9a-f]{64}$/);

/** A stretch of one origin's chain, in a JSON Lines file of its own; parts stand in the order in which they were filed. */
const part = z.strictObject({
  file: z.string().regex(/^ledger\/\d{4,7}\.jsonl$/),
  origin: z.uuid(),
  /** Number of the last entry before this part. */
  after: z.number().int().min(0),
  entries: z.number().int().min(1),
  /** Hash of its last entry. */
  head: hash,
});

/** Only to tell a newer archive from a broken one. */
export const anyManifest = z.looseObject({ format: z.literal(FORMAT), version: z.number().int().min(1) });

export const manifest = z.strictObject({
  format: z.literal(FORMAT),
  version: z.literal(ARCHIVE_VERSION),
  program: z.string().max(40),
  madeAt: z.iso.datetime(),
  demo: z.boolean(),
  waveforms: z.boolean(),
  entries: z.number().int().min(0),
  /** Where each origin's chain ends. */
  heads: z.array(z.strictObject({ origin: z.uuid(), entries: z.number().int().min(1), head: hash })).max(100_000),
  parts: z.array(part).max(1_000_000),
  signedHeads: z.array(z.record(z.string(), z.union([z.string(), z.number()]))).max(1_000_000),
});
export type Manifest = z.infer<typeof manifest>;
export type ManifestPart = z.infer<typeof part>;

/** A line of `waveforms.jsonl`: the packed readings of one cycle, as their check names them by hash. */
export type WaveformLine = {
  readonly origin: string;
  readonly seq: number;
  readonly cycleId: string;
  readonly sampleCount: number;
  readonly hash: string;
  /** Base64. */
  readonly packed: string;
};
