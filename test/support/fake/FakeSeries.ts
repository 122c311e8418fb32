import type { CycleView, Draft, Forming, SeriesFigures } from "../../../app/contract/seriesViews.ts";
import type { Spindle } from "../../../app/ledger/register.ts";
import type { Reason } from "../../../app/verdict/Judgement.ts";
import { fakeVerdict } from "./fakeHistory.ts";
import { idsFrom } from "./fakeId.ts";

const newId = idsFrom(50_000);

/** The draft of the fake core: cycles are added, left out, typed in; the verdict is a plain comparison. */
export class FakeSeries {
  draft: Draft = emptyDraft();
  readonly #spindleOf: (id: string | undefined) => Spindle | undefined;
  readonly #baselineOf: (id: string | undefined) => number | undefined;

  constructor(
    spindleOf: (id: string | undefined) => Spindle | undefined,
    baselineOf: (id: string | undefined) => number | undefined,
  ) {
    this.#spindleOf = spindleOf;
    this.#baselineOf = baselineOf;
  }

  change(change: Partial<Draft>): Draft {
    const next = { ...this.draft, ...change };
    const figures = figuresOf(next);
    const forming = this.#forming(next, figures);
    this.draft = { ...next, figures, forming, cannotFile: cannotFile(next, figures) };
    return this.draft;
  }

  add(cycle: Omit<CycleView, "cycleId" | "number">): CycleView {
    const closed = { ...cycle, cycleId: newId(), number: this.draft.cycles.length + 1 };
    this.change({ cycles: [...this.draft.cycles, closed], typed: undefined });
    return closed;
  }

  drop(cycleId: string, dropped: { readonly reason: string } | undefined): Draft {
    return this.change({ cycles: this.draft.cycles.map((c) => (c.cycleId === cycleId ? { ...c, dropped } : c)) });
  }

  clear(): Draft {
    const { gaugeId, operatorId } = this.draft.tag;
    this.draft = emptyDraft();
    return this.change({ tag: { ...this.draft.tag, gaugeId, operatorId } });
  }

  #forming(draft: Draft, figures: SeriesFigures): Forming | undefined {
    const spindle = this.#spindleOf(draft.tag.spindleId);
    const valueN = figures.meanN;
    if (spindle === undefined || valueN === undefined) return undefined;
    const expandedN = 90;
    const baselineN = this.#baselineOf(spindle.spindleId);
    const verdict = fakeVerdict(spindle, valueN, expandedN, baselineN);
    const { minimumN, warningN } = spindle.limits;
    const drop = baselineN === undefined ? undefined : 1 - valueN / baselineN;
    const reasons: Reason[] =
      minimumN !== undefined && verdict === "stop"
        ? [{ code: "belowMinimum", valueN, expandedN, limitN: minimumN }]
        : verdict === "watch"
          ? [{ code: "belowWarning", valueN, expandedN, limitN: warningN }]
          : [{ code: "withinLimits", valueN, expandedN, limitN: warningN ?? minimumN }];
    if (drop !== undefined) reasons.push({ code: "holdsBaseline", valueN, otherN: baselineN, share: drop });
    return {
      valueN,
      budget: {
        contributions: [
          { source: "repeatability", type: "A", distribution: "t", standardN: 30, degreesOfFreedom: 2, assumed: false },
          { source: "adapter", type: "B", distribution: "normal", standardN: 32, degreesOfFreedom: 50, assumed: false },
          {
            source: "misalignment",
            type: "B",
            distribution: "rectangular",
            standardN: 12,
            degreesOfFreedom: 50,
            assumed: true,
          },
        ],
        standardN: 45,
        degreesOfFreedom: 21,
        coverageFactor: 2.08,
        coverage: 0.95,
        expandedN,
        dominant: "adapter",
      },
      judgement: {
        verdict,
        conformity: verdict === "stop" ? "nonConforming" : "conforming",
        zone: undefined,
        probabilityConforming: 0.99,
        dropFromBaseline: drop,
        dropFromPrevious: undefined,
        reasons,
      },
      weakenedBy: [],
      settling: undefined,
    };
  }
}

function cannotFile(draft: Draft, figures: SeriesFigures): Draft["cannotFile"] {
  if (figures.meanN === undefined) return "nothingMeasured";
  if (draft.tag.spindleId === undefined) return "noSpindle";
  if (draft.typed === undefined && draft.tag.gaugeId === undefined) return "noGauge";
  if (draft.warnings.some((warning) => warning.weight === "block")) return "blocked";
  if (draft.warnings.some((w) => w.weight === "ask" && w.overriddenWith === undefined)) return "reasonWanted";
  return undefined;
}

function figuresOf(draft: Draft): SeriesFigures {
  const counting = draft.cycles
    .filter((cycle) => cycle.dropped === undefined)
    .map((cycle) => cycle.settledN ?? cycle.peakN);
  const values = draft.typed === undefined ? counting : [draft.typed.valueN];
  const n = values.length;
  const meanN = n === 0 ? undefined : values.reduce((a, b) => a + b, 0) / n;
  const sN = n < 2 ? undefined : Math.sqrt(values.reduce((a, v) => a + (v - meanN!) ** 2, 0) / (n - 1));
  return {
    n,
    basis: draft.typed === undefined ? "settled" : "typed",
    meanN,
    sN,
    rangeN: n < 2 ? undefined : Math.max(...values) - Math.min(...values),
    meanUncertaintyN: sN === undefined ? undefined : sN / Math.sqrt(n),
    firstDifference: n < 3 ? undefined : 0.002,
    outliers: [],
    scatter: n < 2 ? "unknown" : "small",
  };
}

function emptyDraft(): Draft {
  return {
    seriesId: newId(),
    tag: { spindleId: undefined, adapterId: undefined, gaugeId: undefined, operatorId: undefined },
    reason: "routine",
    spindleWarm: undefined,
    temperatureC: undefined,
    counter: undefined,
    note: "",
    workOrder: undefined,
    roundId: undefined,
    adapterBefore: undefined,
    cycles: [],
    typed: undefined,
    figures: figuresOf({ cycles: [], typed: undefined } as unknown as Draft), // the two parts it reads
    forming: undefined,
    warnings: [],
    cannotFile: "nothingMeasured",
    recovered: false,
  };
}
