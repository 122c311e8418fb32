import type { ForceUnit } from "../../app/quantity/forceUnits.ts";
import { parseForceUnit } from "../../app/quantity/parseForceUnit.ts";

/** A column's head: its words without the unit, and what the unit is. */
export type Head = {
  /** Lower case, umlauts written out, letters and digits alone. */
  readonly plain: string;
  readonly unit: ForceUnit | undefined;
  /** A unit that is no force, and why, in words. */
  readonly wrongUnit: { readonly code: "torque" | "mass"; readonly message: string } | undefined;
  /** The head names percent. */
  readonly percent: boolean;
};

/** Reads "minimum_kN", "Mindestkraft [daN]", "Min. in N", "Unsicherheit %". */
export function readHead(text: string): Head {
  const name = text.trim();
  const parts = /^(.*?)(?:\s*[[({]\s*([^\])}]+?)\s*[\])}]|[\s_,;/:-]+(?:in\s+)?([^\s_,;/:]+))$/iu.exec(name);
  const unitText = parts?.[2] ?? parts?.[3];
  const percent = /%|percent|prozent/i.test(name);
  const meaning = unitText === undefined ? undefined : parseForceUnit(unitText);
  if (parts === null || meaning === undefined || meaning.kind === "unknown") {
    return {
      plain: plainWords(name.replace(/%|percent|prozent/gi, "")),
      unit: undefined,
      wrongUnit: undefined,
      percent,
    };
  }
  const plain = plainWords(parts[1]!.replace(/\bin$/i, ""));
  if (meaning.kind === "force") return { plain, unit: meaning.unit, wrongUnit: undefined, percent };
  const message =
    meaning.kind === "torque" ? meaning.reason : `${unitText} is a mass; write ${meaning.unit} where a force is meant`;
  return { plain, unit: undefined, wrongUnit: { code: meaning.kind, message }, percent };
}

const writtenOut: Readonly<Record<string, string>> = { ä: "ae", ö: "oe", ü: "ue", ß: "ss" };

function plainWords(text: string): string {
  return text
    .toLowerCase()
    .replace(/[äöüß]/g, (letter) => writtenOut[letter]!)
    .normalize("NFKD")
    .replace(/[^a-z0-9]/g, "");
}
