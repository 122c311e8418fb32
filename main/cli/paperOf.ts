import { UsageError } from "./Command.ts";

/** @throws UsageError  a paper nothing is laid out for */
export function paperOf(text: string | undefined): "A4" | "Letter" {
  const paper = (text ?? "A4").toLowerCase();
  if (paper === "a4") return "A4";
  if (paper === "letter") return "Letter";
  throw new UsageError(`--paper must be A4 or Letter, got ${text}`);
}
