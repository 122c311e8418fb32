import { AppError } from "../../app/contract/result.ts";
import { canonicalJson } from "../../app/ledger/canonicalJson.ts";
import type { Round } from "../../app/ledger/round.ts";
import { sha256 } from "../store/ledger/sha256.ts";

/** Tells a round as it stands from the same round changed: the same content has the same version. */
export const roundVersion = (round: Round): string => sha256(canonicalJson(round)).slice(0, 16);

/**
 * @param seen  the version somebody looked at when he acted; undefined: he acts on it however it stands
 * @throws AppError  `roundChanged`: somebody else has changed it since
 */
export function refuseIfChanged(round: Round, seen: string | undefined): void {
  if (seen === undefined || roundVersion(round) === seen) return;
  throw new AppError(
    "conflict",
    "This round was changed meanwhile, on another page or at the bench. It is shown as it stands now: look again, then go on. Nothing was changed.",
    { key: "roundChanged" },
  );
}
