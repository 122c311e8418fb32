import { parseForceUnit } from "../../quantity/parseForceUnit.ts";
import type { LearnResult } from "../learnPattern.ts";
import type { LinePattern } from "../linePattern.ts";
import { ParityStripper } from "../ParityStripper.ts";
import { findParity } from "./findParity.ts";
import { findLineEnds, type LineEnds, pickBytes, type SampleLine, sampleLines, textOf } from "./sampleLines.ts";

export type Sample = {
  readonly lines: readonly SampleLine[];
  readonly ends: LineEnds;
  readonly parity: LinePattern["parity"];
};

export type Nothing = Extract<LearnResult, { kind: "nothing" }>;

export type Torque = Extract<LearnResult, { kind: "torque" }>;

export const nothing = (reason: string, lineEnds: boolean): Nothing => ({ kind: "nothing", reason, lineEnds });

/** Bytes without one line end beyond this are no single pasted line. */
const oneLine = 240;

/** The sample's lines as text, parity taken off; or why there are none. */
export function readSample(bytes: Uint8Array): Sample | Nothing | Torque {
  if (bytes.length === 0) return nothing("the sample is empty", false);
  const picks = pickBytes(bytes);
  const parity = findParity(picks[0]!);
  const texts = picks.map((pick) => textOf(stripped(pick, parity)));
  const ends =
    findLineEnds(texts[0]!) ??
    (bytes.length <= oneLine ? { terminator: "any" as const, fill: false, afterEnd: 0 } : undefined);
  if (ends === undefined)
    return nothing("there is no line end in the whole sample: the port's speed may be wrong", false);
  const lines: SampleLine[] = [];
  let order = 0;
  texts.forEach((text, i) => {
    // All but the first piece begin in the middle of a line.
    const found = sampleLines(text, ends).slice(i === 0 ? 0 : 1);
    for (const line of found) lines.push({ text: line.text, order: order + line.order });
    order = (lines.at(-1)?.order ?? 0) + 1000; // a jump, so that no step is taken across
  });
  const torque = lines.length === 0 ? torqueBeyondAscii(texts[0]!) : undefined;
  if (torque !== undefined) return torque;
  return lines.length === 0
    ? nothing("no line of the sample is text: the port's speed or parity may be wrong", true)
    : { lines, ends, parity };
}

/** "N·m" with a dot beyond seven bits: no line can be read, but the reason to refuse them is the torque. */
function torqueBeyondAscii(text: string): Torque | undefined {
  const unit = /\d\s*([A-Za-z]+[\x80-\xff]+[A-Za-z]+)/.exec(text)?.[1]?.replace(/[\x80-\xff]+/, "·");
  const meaning = unit === undefined ? undefined : parseForceUnit(unit);
  return meaning?.kind === "torque" ? { kind: "torque", unit: unit!, reason: meaning.reason } : undefined;
}

function stripped(bytes: Uint8Array, parity: LinePattern["parity"]): Uint8Array {
  if (parity === "none") return bytes;
  const parts: number[] = [];
  new ParityStripper(parity).strip(bytes, (clean) => {
    for (const byte of clean) parts.push(byte);
  });
  return Uint8Array.from(parts);
}
