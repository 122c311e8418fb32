import { readFile } from "node:fs/promises";
import { learnPattern } from "../../app/gauge/learnPattern.ts";
import { type LinePattern, linePatternSchema } from "../../app/gauge/linePattern.ts";
import type { ForceUnit } from "../../app/quantity/forceUnits.ts";
import { UsageError } from "./Command.ts";

/**
 * Reads a pattern file.
 * @throws UsageError  it cannot be read, or holds no line pattern
 */
export async function readPatternFile(file: string): Promise<LinePattern> {
  let text: string;
  try {
    text = await readFile(file, "utf8");
  } catch (cause) {
    throw new UsageError(`${file}: cannot be read (${(cause as NodeJS.ErrnoException).code}); check the name`);
  }
  try {
    const json = JSON.parse(text) as unknown;
    // What `learn --json` prints holds the pattern among other things.
    const inner = typeof json === "object" && json !== null && "pattern" in json ? json.pattern : json;
    return linePatternSchema.parse(inner);
  } catch (cause) {
    const why =
      cause instanceof SyntaxError ? cause.message : "it is not of the form that holdfast learn --json writes";
    throw new UsageError(`${file}: no line pattern (${why})`);
  }
}

/**
 * Learns how the lines are written from the beginning of a stream.
 * @throws UsageError  torque, no lines of a force, or a unit only the user knows
 */
export function learnFrom(sample: Uint8Array, where: string, unit: ForceUnit | undefined): LinePattern {
  const learned = learnPattern(sample, { unit, keepLines: 0 });
  if (learned.kind === "torque")
    throw new UsageError(`${where}: the lines carry a torque, not a force; ${learned.reason}`);
  if (learned.kind === "nothing") throw new UsageError(`${where}: no pattern found: ${learned.reason}`);
  const open = learned.undecided.find((question) => question.field === "unit");
  if (open !== undefined) throw new UsageError(`${where}: ${open.question} Say it with --unit, as in --unit kN`);
  return learned.pattern;
}
