import type { SeriesFigures } from "../../app/contract/seriesViews.ts";
import type { Budget } from "../../app/correction/Budget.ts";
import type { CorrectedForce } from "../../app/correction/correctForce.ts";
import type { Cycle, CycleFlag } from "../../app/cycle/Cycle.ts";
import type { Remark } from "../../app/ledger/check.ts";
import type { DraftState } from "./DraftState.ts";
import type { FormFacts } from "./FormFacts.ts";

const flagsThatWeaken: readonly CycleFlag[] = ["unstable", "overload", "cut", "notReleased", "short"];

/** What weakens the verdict and is said beside it: the tools compared with last time, their proofs, and the takes themselves. */
export function weaknessesOf(
  state: DraftState,
  facts: FormFacts,
  figures: SeriesFigures,
  counted: readonly Cycle[],
  { force, budget }: { readonly force: CorrectedForce; readonly budget: Budget },
): readonly Remark[] {
  const { gauge, adapter, previous, today, gaugeFoundOff } = facts;
  const found: Remark[] = [];
  const say = (holds: boolean, code: string, about?: string) =>
    holds && found.push(about === undefined ? { code } : { code, about });
  const changed = (now: string | undefined, then: string | null | undefined) =>
    then != null && now !== undefined && now !== then;

  say(changed(gauge?.gaugeId, previous?.check.gaugeId), "gaugeChanged");
  say(changed(adapter?.adapterId, previous?.check.adapterId), "adapterChanged");
  say(changed(state.tag.operatorId, previous?.check.operatorId), "operatorChanged");
  say(gauge !== undefined && gauge.curve === undefined, "gaugeUnproved", gauge?.name);
  say(gaugeFoundOff, "gaugeFoundOff", gauge?.name);
  say(gauge?.dueOn !== undefined && gauge.dueOn < today, "proofPastDue", gauge?.name);
  say(adapter?.assumed === true, "adapterUncalibrated", adapter?.name);
  say(adapter?.dueOn !== undefined && adapter.dueOn < today, "adapterPastDue", adapter?.name);
  say(force.outsideProof, "outsideProof", gauge?.name);
  say(assumedAlone(budget), "assumedShare", budget.dominant);
  const docked = state.typed?.docked;
  say(figures.basis === "typed", docked === undefined ? "typedValue" : "dockedValue");
  say(figures.basis === "peak" || docked?.held === true, "peakOnly");
  say(docked === undefined ? figures.basis !== "typed" && figures.n === 1 : docked.takes === 1, "oneClamping");
  say(figures.scatter === "large", "largeScatter");
  say(figures.outliers.length > 0, "outliers", figures.outliers.join(", "));
  for (const flag of flagsThatWeaken)
    say(
      counted.some((c) => c.flags.includes(flag)),
      flag,
    );
  say(counted.length > 0 && counted.at(-1)!.zeroAfterN === undefined, "noZeroAfter");
  return found;
}

/** Most of the uncertainty is a default nobody has confirmed, and no other remark says so already. */
function assumedAlone({ contributions, dominant }: Budget): boolean {
  if (dominant === "gaugeProof" || dominant === "adapter") return false;
  return contributions.some(({ source, assumed }) => source === dominant && assumed);
}
