import type { Draft } from "../../../../app/contract/seriesViews.ts";
import type { ForceUnit } from "../../../../app/quantity/forceUnits.ts";
import { useKeys } from "../../../ui/keys/useKeys.ts";
import { AdapterChange } from "./AdapterChange.tsx";
import { PassDialog } from "./PassDialog.tsx";
import { RoundResult } from "./RoundResult.tsx";
import { RoundStrip } from "./RoundStrip.tsx";
import { StopPicker } from "./StopPicker.tsx";
import type { Place } from "./useGoTo.ts";
import { useLeadingRound } from "./useLeadingRound.ts";
import { type RoundActs, useRoundActs } from "./useRoundActs.ts";
import { walkOf } from "./walkOf.ts";

/** The round in hand, where one is: it leads above the tag, and tells its result when nothing is left. */
export function RoundInHand({
  draft,
  unit,
  taper,
  goTo,
}: {
  readonly draft: Draft;
  readonly unit: ForceUnit;
  readonly taper: string | undefined;
  readonly goTo: (place: Place) => void;
}) {
  const round = useLeadingRound(draft.roundId ?? undefined);
  const acts = useRoundActs();
  const { at } = round === undefined ? { at: undefined } : walkOf(round, draft.tag.spindleId);
  useKeys({ keys: round === undefined ? {} : keysOf(acts, at !== undefined) });
  if (round === undefined) return null;
  const over = draft.tag.spindleId == null && round.state === "done";
  const close = () => acts.ask(undefined);
  return (
    <>
      {over ? (
        <RoundResult round={round} acts={acts} onGo={goTo} />
      ) : (
        <RoundStrip round={round} draft={draft} unit={unit} acts={acts} />
      )}
      <AdapterChange draft={draft} taper={taper} />
      {acts.asked === "stops" && (
        <StopPicker
          round={round}
          chosen={at?.spindleId}
          onChoose={(stop) => {
            close();
            if (stop === undefined) acts.putAway();
            else goTo(stop);
          }}
          onClose={close}
        />
      )}
      {(acts.asked === "later" || acts.asked === "leftOut") && at !== undefined && (
        <PassDialog
          name={at.name}
          as={acts.asked}
          onReason={(why) => acts.pass(acts.asked === "later" ? "later" : "leftOut", why)}
          onClose={close}
        />
      )}
    </>
  );
}

function keysOf(acts: RoundActs, atStop: boolean): Readonly<Record<string, () => void>> {
  const all = { p: () => acts.ask("stops") };
  return atStop ? { ...all, l: () => acts.ask("later"), x: () => acts.ask("leftOut") } : all;
}
