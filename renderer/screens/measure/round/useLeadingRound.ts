import { useEffect, useState } from "react";
import type { RoundView } from "../../../../app/contract/roundViews.ts";
import { useCore } from "../../../state/CoreContext.ts";

/** The round in hand as it stands now; undefined without one. */
export function useLeadingRound(roundId: string | undefined): RoundView | undefined {
  const core = useCore();
  const [round, setRound] = useState<RoundView>();
  useEffect(() => {
    if (roundId === undefined) return;
    let gone = false;
    const load = async () => {
      const answer = await core.client.call("rounds.get", { roundId });
      if (!gone && answer.ok) setRound(answer.value);
    };
    load();
    const undo = [
      core.client.on("round.changed", (changed) => {
        if (changed.roundId === roundId) setRound(changed);
      }),
      core.client.on("register.changed", load), // a spindle may have been retired
    ];
    return () => {
      gone = true;
      for (const one of undo) one();
    };
  }, [core, roundId]);
  return round?.roundId === roundId ? round : undefined;
}
