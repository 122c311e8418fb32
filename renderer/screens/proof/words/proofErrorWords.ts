import type { Failure } from "../../../../app/contract/result.ts";
import { errorWords } from "../../../words/errorWords.ts";
import type { Speech } from "../../../words/Speech.ts";
import { problemTexts } from "./problemTexts.ts";
import { refusalTexts } from "./proofStateTexts.ts";

/** A refused call about a proof in the reader's language; what has no words here keeps the core's own. */
export function proofErrorWords(failure: Failure, speech: Speech): string {
  const [room, code = ""] = failure.key?.split(".") ?? [];
  const refusals = refusalTexts[speech.language];
  if (room === "proof" && Object.hasOwn(refusals, code)) return refusals[code as keyof typeof refusals]; // just found
  const problems = problemTexts[speech.language];
  if (room === "plan" && Object.hasOwn(problems, code)) {
    const said = problems[code as keyof typeof problems]; // just found
    if (typeof said === "string") return said;
  }
  return errorWords(failure, speech);
}
