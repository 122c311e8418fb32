import type { Handlers } from "../../../app/contract/methods.ts";
import type { CheckRow } from "../../../app/contract/recordViews.ts";
import { AppError } from "../../../app/contract/result.ts";
import type { Draft } from "../../../app/contract/seriesViews.ts";
import { parseForce } from "../../../app/quantity/parseForce.ts";
import type { FakeState } from "../fakeCore.ts";
import { idsFrom } from "./fakeId.ts";

type Names = Extract<keyof Handlers, `series.${string}`>;
const newId = idsFrom(70_000);

export function seriesHandlers(state: FakeState): Pick<Handlers, Names> {
  const changed = (draft: Draft) => {
    state.say("draft.changed", draft);
    return draft;
  };
  const { series } = state;
  return {
    "series.tag": ({ seriesId: _, ...tag }) => {
      const given = Object.entries(tag).map(([key, id]) => [key, id ?? undefined]);
      return changed(series.change({ tag: { ...series.draft.tag, ...Object.fromEntries(given) } }));
    },
    "series.describe": ({ seriesId: _, ...about }) => {
      const given = Object.entries(about).map(([key, value]) => [key, value ?? undefined]);
      return changed(series.change(Object.fromEntries(given)));
    },
    "series.drop": ({ cycleId, dropped }) => changed(series.drop(cycleId, dropped ?? undefined)),
    "series.takeAgain": () => {
      const last = series.draft.cycles.findLast((cycle) => cycle.dropped === undefined);
      return last === undefined ? series.draft : changed(series.drop(last.cycleId, { reason: "taken again" }));
    },
    "series.override": ({ code, reason }) =>
      changed(
        series.change({
          warnings: series.draft.warnings.map((w) => (w.code === code ? { ...w, overriddenWith: reason } : w)),
        }),
      ),
    "series.type": ({ text }) => {
      if (text === null) return changed(series.change({ typed: undefined }));
      const parsed = parseForce(text);
      if (parsed.kind !== "force")
        throw new AppError("invalid", "reason" in parsed ? parsed.reason : "A unit is missing.");
      return changed(series.change({ typed: { valueN: parsed.forceN, text } }));
    },
    "series.clear": () => changed(series.clear()),
    "series.accept": ({ spindleId }) => {
      const { draft } = series;
      if (draft.cannotFile !== undefined || draft.forming === undefined) {
        throw new AppError("refused", "This series cannot be filed yet.");
      }
      const { forming } = draft;
      const row: CheckRow = {
        checkId: newId(),
        spindleId,
        measuredAtMs: state.nowMs(),
        valueN: forming.valueN,
        expandedN: forming.budget.expandedN,
        standardUncertaintyN: forming.budget.standardN,
        verdict: forming.judgement.verdict,
        basis: draft.figures.basis,
        source: draft.typed === undefined ? "measured" : "typed",
        n: draft.figures.n,
        dropFromBaseline: forming.judgement.dropFromBaseline,
        dropFromPrevious: undefined,
        gaugeId: draft.tag.gaugeId,
        adapterId: draft.tag.adapterId,
        operatorId: draft.tag.operatorId,
        isBaseline: false,
        voided: undefined,
      };
      state.checks.push(row);
      state.undo = { checkId: row.checkId, untilMs: Date.now() + 60_000 };
      const spindle = state.refile(spindleId);
      state.say("check.filed", { row, spindle, undoUntilMs: state.undo.untilMs });
      return { row, again: false, draft: changed(series.clear()) };
    },
  };
}
