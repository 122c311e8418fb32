import type { Input } from "../../../../app/contract/methods.ts";
import { type ForceUnit, toNewtons } from "../../../../app/quantity/forceUnits.ts";
import { parseNumber } from "../../../words/parseNumber.ts";

/** One load as it stands in the fields: read without the adapter (or with the known one), and with it. */
export type PairDraft = {
  readonly run: string;
  readonly load: string;
  readonly without: string;
  readonly withIt: string;
};

export const firstPairs: readonly PairDraft[] = ["1", "2", "3"].map((run) => ({
  run,
  load: "",
  without: "",
  withIt: "",
}));

type Pairs = Extract<Input<"adapters.factor">["from"], { pairs: unknown }>["pairs"];

/**
 * The pairs in newtons.
 * @returns  undefined where a figure is not above zero or a run has no label
 */
export function pairsOf(drafts: readonly PairDraft[], unit: ForceUnit): Pairs | undefined {
  const pairs = drafts.map(({ run, load, without, withIt }) => {
    const [referenceN, withoutN, withN] = [load, without, withIt].map((typed) => {
      const value = parseNumber(typed);
      return typeof value === "number" && value > 0 ? toNewtons(value, unit) : undefined;
    });
    if (referenceN === undefined || withoutN === undefined || withN === undefined || run.trim() === "")
      return undefined;
    return {
      run: run.trim(),
      without: { referenceN, netN: withoutN },
      withIt: { referenceN, netN: withN },
    };
  });
  return pairs.length > 0 && pairs.every((pair) => pair !== undefined) ? pairs : undefined;
}
