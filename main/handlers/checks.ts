import type { Handlers } from "../../app/contract/methods.ts";
import type { CheckPage, SpindleRow } from "../../app/contract/recordViews.ts";
import { AppError } from "../../app/contract/result.ts";
import type { Check } from "../../app/ledger/check.ts";
import { termsOf } from "../../app/verdict/termsOf.ts";
import { todaysWord } from "../../app/verdict/todaysWord.ts";
import { checkPage, checkSummary, type FiledCheck, readCheck } from "../store/records/checks.ts";
import { readSpindle } from "../store/records/spindles.ts";
import { cyclesWithWaveform, readWaveform } from "../store/records/waveforms.ts";
import { decodeWaveform } from "../store/waveform.ts";
import type { Context } from "./Context.ts";
import { toCheckRow, toSpindleRow } from "./rows.ts";
import { waveformView } from "./waveformView.ts";

type Part = Pick<
  Handlers,
  | "checks.list"
  | "checks.get"
  | "checks.waveform"
  | "checks.rejudge"
  | "checks.void"
  | "checks.undo"
  | "baseline.choose"
  | "stop.release"
  | "services.save"
>;

/** What was filed: reading it, and the acts that end it or say more about it. Nothing filed is ever changed. */
export function checkHandlers(context: Context): Part {
  const { store, hub } = context;

  /** Says to all pages how the spindle stands now. */
  const told = (spindleId: string): SpindleRow => {
    const row = toSpindleRow(readSpindle(store.db, spindleId)!); // a filed check names a registered spindle
    hub.say("spindle.changed", row);
    context.series.refresh();
    return row;
  };

  const end = (checkId: string, reason: string, operatorId: string | null): SpindleRow => {
    const { summary } = found(checkId);
    if (summary.voided !== undefined)
      throw new AppError("conflict", "This check does not count any more already.", { key: "alreadyVoid" });
    store.append([{ kind: "void", body: { checkId, reason, operatorId } }]);
    context.undo.forget(checkId);
    const row = told(summary.spindleId);
    context.lead.undone(summary.spindleId);
    return row;
  };

  const found = (checkId: string): FiledCheck => {
    const check = readCheck(store.db, checkId);
    if (check === undefined)
      throw new AppError("notFound", "There is no such check in this data file.", { key: "noCheck" });
    return check;
  };

  /** A check from elsewhere may hold figures that no judgement takes: then today has nothing to say. */
  const todayOf = (check: Check): CheckPage["today"] => {
    const spindle = readSpindle(store.db, check.spindleId)?.spindle;
    try {
      return spindle && todaysWord(check, termsOf(spindle, context.works()));
    } catch (cause) {
      context.log.error("today's word on a check", cause);
      return undefined;
    }
  };

  const knownSpindle = (spindleId: string) => {
    if (readSpindle(store.db, spindleId) === undefined)
      throw new AppError("notFound", "There is no such spindle in this data file.", { key: "noSpindle" });
  };

  return {
    "checks.list": ({ spindleId, after, limit }) => {
      const rows = checkPage(
        store.db,
        spindleId,
        limit + 1,
        after === undefined ? undefined : mark(checkSummary(store.db, after)),
      );
      return { rows: rows.slice(0, limit).map(toCheckRow), more: rows.length > limit };
    },

    "checks.get": ({ checkId }): CheckPage => {
      const { check, summary, origin, seq, hash } = found(checkId);
      return {
        check,
        row: toCheckRow(summary),
        hasWaveform: cyclesWithWaveform(store.db, summary.place),
        origin,
        seq,
        hash,
        today: todayOf(check),
      };
    },

    "checks.waveform": ({ checkId, cycleId }) => {
      const { check, summary } = found(checkId);
      const cycle = check.cycles.find((c) => c.cycleId === cycleId);
      const row = cycle && readWaveform(store.db, summary.place, cycleId);
      if (cycle === undefined || row === undefined) {
        throw new AppError("notFound", "No readings were kept of this cycle; its figures are all there is.", {
          key: "noWaveform",
        });
      }
      if (row.hash !== cycle.waveformHash) {
        throw new AppError(
          "damaged",
          "The readings of this cycle are not those that were filed with the check. The figures of the check stand.",
          { key: "waveformDamaged" },
        );
      }
      return waveformView(cycleId, decodeWaveform(row.bytes), cycle.zeroN);
    },

    "checks.rejudge": () => ({ jobId: context.jobs.start("rejudge", { works: context.works() }) }),

    "checks.void": ({ checkId, reason, operatorId }) => end(checkId, reason, operatorId ?? null),

    "checks.undo": ({ checkId }) => {
      if (!context.undo.allows(checkId)) {
        throw new AppError("refused", "The minute is over. Void the check on the spindle's page, with the reason.", {
          key: "undoOver",
        });
      }
      return end(checkId, "taken back within a minute of filing", found(checkId).check.operatorId);
    },

    "baseline.choose": ({ spindleId, checkId, reason, operatorId }) => {
      if (found(checkId).summary.spindleId !== spindleId)
        throw new AppError("invalid", "This check belongs to another spindle.");
      store.append([{ kind: "baselineChoice", body: { spindleId, checkId, reason, operatorId: operatorId ?? null } }]);
      return told(spindleId);
    },

    "stop.release": ({ spindleId, checkId, reason, operatorId, workOrder }) => {
      const standing = readSpindle(store.db, spindleId);
      const stop = standing?.stop;
      if (stop === undefined) throw new AppError("refused", "No stop stands on this spindle.", { key: "noStop" });
      const proof = found(checkId).summary;
      if (proof.spindleId !== spindleId || proof.measuredAtMs <= stop.sinceMs || proof.voided !== undefined) {
        throw new AppError(
          "refused",
          "A stop is released with a check made after it. Measure this spindle again first.",
          { key: "stopNeedsCheck" },
        );
      }
      if (proof.verdict === "stop") {
        throw new AppError("refused", "The newest check says stop as well. The spindle is not to be used.", {
          key: "stopStands",
        });
      }
      store.append([
        { kind: "stopRelease", body: { spindleId, checkId, reason, operatorId, workOrder: workOrder ?? null } },
      ]);
      return told(spindleId);
    },

    "services.save": (input) => {
      knownSpindle(input.spindleId);
      const event = { ...input, eventId: input.eventId ?? store.newId() };
      store.append([{ kind: "serviceEvent", body: event }]);
      told(input.spindleId);
      return event;
    },
  };
}

const mark = (summary: { measuredAtMs: number; place: number } | undefined) =>
  summary && { measuredAtMs: summary.measuredAtMs, place: summary.place };
