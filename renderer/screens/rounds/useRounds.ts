import { useCallback, useEffect, useState } from "react";
import type { DueView, RoundView } from "../../../app/contract/roundViews.ts";
import { useCore } from "../../state/CoreContext.ts";
import { useReport } from "../shell/useReport.ts";

/** The due list and the rounds, asked for anew when a round or a check has changed. */
export function useRounds(): {
  readonly due: DueView | undefined;
  readonly rounds: readonly RoundView[] | undefined;
  readonly reload: () => void;
} {
  const core = useCore();
  const report = useReport();
  const [due, setDue] = useState<DueView>();
  const [rounds, setRounds] = useState<readonly RoundView[]>();
  const reload = useCallback(() => {
    report(core.client.call("rounds.due", {})).then((view) => view !== undefined && setDue(view));
    report(core.client.call("rounds.list", {})).then((list) => list !== undefined && setRounds(list));
  }, [core, report]);
  useEffect(() => {
    reload();
    const undo = [
      core.client.on("round.changed", (now) => {
        // At once, so that the next act is on the round as it stands and not on the one before.
        setRounds((list) => list?.map((round) => (round.roundId === now.roundId ? now : round)));
        reload();
      }),
      core.client.on("docking.filed", reload),
      core.client.on("check.filed", reload),
      core.client.on("register.changed", reload),
    ];
    return () => {
      for (const one of undo) one();
    };
  }, [core, reload]);
  return { due, rounds, reload };
}
