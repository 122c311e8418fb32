import type { Verdict } from "../../../app/verdict/Judgement.ts";
import { type Filter, noFilter } from "./filterRows.ts";

const PLACE = "#/spindles";
const verdicts: readonly Filter["verdict"][] = [
  "stop",
  "act",
  "watch",
  "cannotTell",
  "good",
  "never",
] satisfies readonly (Verdict | "never")[];

/** The filter as the address carries it: `#/spindles?area=Hall+A&verdict=act`. What is not there filters nothing. */
export function filterOf(hash: string): Filter {
  const at = hash.indexOf("?");
  if (at === -1) return noFilter;
  const query = new URLSearchParams(hash.slice(at + 1));
  return {
    text: query.get("text") ?? "",
    area: query.get("area") ?? "",
    taper: query.get("taper") ?? "",
    verdict: verdicts.find((one) => one === query.get("verdict")) ?? "",
    withRetired: query.get("retired") === "1",
  };
}

export function addressOf({ text, area, taper, verdict, withRetired }: Filter): string {
  const query = new URLSearchParams();
  for (const [name, value] of Object.entries({ text, area, taper, verdict })) if (value !== "") query.set(name, value);
  if (withRetired) query.set("retired", "1");
  return query.size === 0 ? PLACE : `${PLACE}?${query}`;
}

let last = PLACE;

/** Keeps a filter in the address without a new step in the browser's history for every letter typed. */
export function keepInAddress(filter: Filter): void {
  last = addressOf(filter);
  history.replaceState(history.state, "", last);
}

/** The way back to the list as it was last seen. */
export const lastList = (): string => last;
