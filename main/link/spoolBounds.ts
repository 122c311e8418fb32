import { unlink } from "node:fs/promises";
import { compactSpool, surveySpool } from "./compactSpool.ts";
import { leftovers, listSpools, type SpoolFile } from "./spoolFolder.ts";

export type SpoolLimits = {
  /** All spools together; default 1 GiB. */
  readonly maxBytes: number;
  /** Default seven days. */
  readonly maxAgeMs: number;
};

const usualLimits: SpoolLimits = { maxBytes: 1 << 30, maxAgeMs: 7 * 24 * 3_600_000 };

export type BoundsOptions = {
  readonly folder: string;
  readonly nowMs: number;
  readonly limits?: SpoolLimits | undefined;
  /** The part being written, which is left alone. */
  readonly inUse: string | undefined;
};

export type BoundsKept = {
  /** Something that was not filed had to go: quiet stretches, or more. */
  readonly trimmed: boolean;
  readonly bytes: number;
};

/**
 * Keeps the spools in their bounds. What is too old goes. When all together are too large, the oldest part is looked at
 * first: it goes when nothing in it waits to be filed; else its quiet stretches go; only when that is not enough, it goes
 * whole. Cheap while nothing is over its bound.
 */
export async function keepBounds({ folder, nowMs, limits = usualLimits, inUse }: BoundsOptions): Promise<BoundsKept> {
  let trimmed = false;
  for (const left of leftovers(folder)) await unlink(left);
  const files = listSpools(folder);
  let bytes = files.reduce((sum, file) => sum + file.bytes, 0);
  const others = files.filter((file) => file.path !== inUse);
  const remove = async (file: SpoolFile, known: boolean) => {
    const survey = known ? undefined : await surveySpool(file.path);
    if (survey === undefined || survey.unfiled) trimmed = true;
    await unlink(file.path);
    bytes -= file.bytes;
  };

  const old = others.filter((file) => nowMs - file.modifiedMs > limits.maxAgeMs);
  for (const file of old) await remove(file, false);
  const kept = others.filter((file) => !old.includes(file));
  const compacted: SpoolFile[] = [];
  for (const file of kept) {
    if (bytes <= limits.maxBytes) break;
    const survey = await surveySpool(file.path);
    if (!survey.unfiled) {
      await unlink(file.path);
      bytes -= file.bytes;
      continue;
    }
    const left = await compactSpool(file.path, survey);
    if (left < file.bytes) trimmed = true;
    bytes -= file.bytes - left;
    compacted.push({ ...file, bytes: left });
  }
  for (const file of compacted) if (bytes > limits.maxBytes) await remove(file, true);
  return { trimmed, bytes };
}
