import type { ProofAct } from "../../../../app/proof/plan/proofActs.ts";
import type { ForceUnit } from "../../../../app/quantity/forceUnits.ts";
import type { Speech } from "../../../words/Speech.ts";
import { actTexts } from "./actTexts.ts";

/** An act as it is said where it is the next thing to do. */
export function actWords(act: ProofAct, speech: Speech, unit: ForceUnit, isFirst = false): string {
  const words = actTexts[speech.language];
  switch (act.kind) {
    case "cautions":
      return words.cautions;
    case "mount":
      return (isFirst ? words.mountFirst : words.mount)(speech.number(act.positionDeg));
    case "preload":
      return words.preload(speech.force(act.targetN, unit));
    case "read": {
      const said = words[act.direction];
      return typeof said === "string" ? said : said(speech.force(act.targetN, unit));
    }
  }
}

/** The same in a list, where the run stands above. */
export function actShort(act: ProofAct, speech: Speech, unit: ForceUnit): string {
  const words = actTexts[speech.language];
  switch (act.kind) {
    case "cautions":
      return words["short.cautions"];
    case "mount":
      return words["short.mount"](speech.number(act.positionDeg));
    case "preload":
      return words["short.preload"](act.number);
    case "read":
      if (act.direction === "up") return speech.force(act.targetN, unit);
      if (act.direction === "down") return words["short.down"](speech.force(act.targetN, unit));
      return words[`short.${act.direction}`];
  }
}
