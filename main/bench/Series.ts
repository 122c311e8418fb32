import type { Parsed } from "../../app/contract/methods.ts";
import { AppError } from "../../app/contract/result.ts";
import type { Draft, Tag } from "../../app/contract/seriesViews.ts";
import type { Cycle } from "../../app/cycle/Cycle.ts";
import { parseForce } from "../../app/quantity/parseForce.ts";
import type { WaveformRow } from "../store/Store.ts";
import { type DraftCycle, type DraftState, freshDraft, type LedTo } from "./DraftState.ts";
import type { Formed } from "./form.ts";
import { toDraftView } from "./toDraftView.ts";

export type SeriesDeps = {
  readonly newId: () => string;
  /** Figures, budget, verdict and warnings that follow from the state and today's register. */
  readonly form: (state: DraftState) => Formed;
  /** Keeps the state so that a restart finds it. */
  readonly save: (state: DraftState) => void;
  readonly changed: (view: Draft) => void;
  /** The adapter a round in hand takes for this spindle, else the one that alone fits its taper, where there is just one. */
  readonly adapterFor: (spindleId: string) => string | undefined;
  readonly readOnly: () => boolean;
};

/**
 * The one series in work, however many pages look at it. It knows no port and no database: cycles come in, every act
 * changes the state, is kept, and is told to all pages.
 */
export class Series {
  readonly #deps: SeriesDeps;
  #state: DraftState;
  #formed: Formed;
  /** Readings by cycle id, packed beside the core as each cycle closes; they go into the data file with the check. */
  readonly #waveforms = new Map<string, Promise<WaveformRow | undefined>>();

  constructor(deps: SeriesDeps, state: DraftState) {
    this.#deps = deps;
    this.#state = state;
    this.#formed = deps.form(state);
  }

  get state(): DraftState {
    return this.#state;
  }

  get formed(): Formed {
    return this.#formed;
  }

  get view(): Draft {
    return toDraftView(this.#state, this.#formed, this.#deps.readOnly());
  }

  /** The packed readings of all cycles; waits for those still being packed. */
  async waveforms(): Promise<readonly WaveformRow[]> {
    const packed = await Promise.all(this.#state.cycles.map(({ cycleId }) => this.#waveforms.get(cycleId)));
    return packed.filter((row) => row !== undefined);
  }

  /** The register or a setting changed: what follows from it is worked out anew. */
  refresh(): void {
    this.#formed = this.#deps.form(this.#state);
    this.#deps.changed(this.view);
  }

  tag({ seriesId, ...tag }: Parsed<"series.tag">): Draft {
    const given = Object.fromEntries(
      Object.entries(tag)
        .filter(([, id]) => id !== undefined)
        .map(([what, id]) => [what, id ?? undefined]),
    );
    const next: Tag = { ...this.#mine(seriesId).tag, ...given };
    const proposed =
      tag.spindleId && tag.adapterId === undefined ? this.#deps.adapterFor(tag.spindleId) : next.adapterId;
    // Another spindle may have another taper: the adapter that was right before may be wrong now.
    return this.#change({ tag: { ...next, adapterId: proposed }, overrides: {} });
  }

  describe({ seriesId, ...said }: Parsed<"series.describe">): Draft {
    const state = this.#mine(seriesId);
    const given = <T>(value: T | null | undefined, old: T | undefined) =>
      value === undefined ? old : (value ?? undefined);
    return this.#change({
      reason: said.reason ?? state.reason,
      spindleWarm: given(said.spindleWarm, state.spindleWarm),
      temperatureC: given(said.temperatureC, state.temperatureC),
      counter: given(said.counter, state.counter),
      note: said.note ?? state.note,
      workOrder: given(said.workOrder, state.workOrder),
    });
  }

  drop({ seriesId, cycleId, dropped }: Parsed<"series.drop">): Draft {
    const { cycles } = this.#mine(seriesId);
    if (!cycles.some((c) => c.cycleId === cycleId))
      throw new AppError("notFound", "This cycle is not part of the series.");
    return this.#change({
      cycles: cycles.map((c) => (c.cycleId === cycleId ? { ...c, dropped: dropped ?? undefined } : c)),
    });
  }

  takeAgain({ seriesId }: Parsed<"series.takeAgain">): Draft {
    const last = this.#mine(seriesId).cycles.findLast((c) => c.dropped === undefined);
    if (last === undefined)
      throw new AppError("refused", "There is no cycle to take again. Clamp first.", { key: "nothingToRetake" });
    return this.drop({ seriesId, cycleId: last.cycleId, dropped: { reason: "taken again" } });
  }

  override({ seriesId, code, reason }: Parsed<"series.override">): Draft {
    const { overrides } = this.#mine(seriesId);
    const warning = this.#formed.warnings.find((w) => w.code === code);
    if (warning === undefined) throw new AppError("notFound", "This warning does not stand any more.");
    if (warning.weight === "block") {
      throw new AppError("refused", "This cannot be overridden: it would put someone or the gauge in danger.", {
        key: "overrideRefused",
      });
    }
    return this.#change({ overrides: { ...overrides, [code]: reason } });
  }

  type({ seriesId, text }: Parsed<"series.type">): Draft {
    this.#mine(seriesId);
    if (text === null) return this.#change({ typed: undefined });
    const force = parseForce(text);
    if (force.kind === "bare")
      throw new AppError("invalid", "Which unit? Write it behind the number, such as 17.92 kN.", {
        key: "force.bare",
        field: "text",
      });
    if (force.kind !== "force")
      throw new AppError("invalid", force.reason, { key: `force.${force.kind}`, field: "text" });
    if (!(force.forceN > 0))
      throw new AppError("invalid", "A clamping force is above zero.", { key: "force.notPositive", field: "text" });
    return this.#change({ typed: { valueN: force.forceN, text, unit: force.unit } });
  }

  /** Lets all of it go; nothing was filed. A round in hand goes on with the same stop. */
  clear({ seriesId }: Parsed<"series.clear">): Draft {
    const { tag, roundId, adapterBefore } = this.#mine(seriesId);
    return this.begin(tag, roundId === undefined ? undefined : { ...tag, roundId, adapterBefore });
  }

  /** A new, empty series, at the stop a round leads to. The sessions that run go on into it from where they stand. */
  begin(keep: Pick<Tag, "gaugeId" | "operatorId">, stop?: LedTo): Draft {
    this.#waveforms.clear();
    this.#replace(led(freshDraft(this.#deps.newId(), keep), stop));
    return this.view;
  }

  /** Tags the series as a round wants it; undefined: no round leads any more, and no spindle is chosen. */
  lead(stop: LedTo | undefined): Draft {
    this.#replace(led(this.#state, stop));
    return this.view;
  }

  /** A closed cycle of a session. Cycles that began before the series did are another's. */
  addCycle(
    sessionId: string,
    cycle: Cycle,
    pack: (cycleId: string) => Promise<WaveformRow | undefined>,
  ): DraftCycle | undefined {
    const session = this.#state.sessions.find((s) => s.sessionId === sessionId);
    if (session !== undefined && cycle.startIndex < session.fromIndex) return undefined;
    const known = this.#state.cycles.find((c) => c.sessionId === sessionId && c.cycle.startIndex === cycle.startIndex);
    const added: DraftCycle = known ?? { cycleId: this.#deps.newId(), sessionId, cycle, dropped: undefined };
    this.#waveforms.set(added.cycleId, pack(added.cycleId));
    if (known === undefined) this.#change({ cycles: [...this.#state.cycles, added] });
    return added;
  }

  /** A session's stream belongs to this series from this place on. */
  follow(sessionId: string, fromIndex: number): void {
    if (this.#state.sessions.some((s) => s.sessionId === sessionId)) return;
    this.#change({ sessions: [...this.#state.sessions, { sessionId, fromIndex, gapsS: [] }] });
  }

  gap(sessionId: string, atS: number | undefined): void {
    if (atS === undefined) return;
    const sessions = this.#state.sessions.map((s) =>
      s.sessionId === sessionId ? { ...s, gapsS: [...s.gapsS, atS] } : s,
    );
    this.#change({ sessions });
  }

  markRecovered(): void {
    if (this.#state.cycles.length > 0) this.#change({ recovered: true });
  }

  tagGauge(gaugeId: string | undefined): void {
    if (gaugeId !== undefined && gaugeId !== this.#state.tag.gaugeId) {
      this.#change({ tag: { ...this.#state.tag, gaugeId }, overrides: {} });
    }
  }

  /** The state, when the caller means the series that is in work. */
  #mine(seriesId: string): DraftState {
    if (seriesId === this.#state.seriesId) return this.#state;
    throw new AppError(
      "conflict",
      "This series was filed or cleared on another page meanwhile. Look at what is shown now.",
      { key: "seriesGone" },
    );
  }

  #change(part: Partial<DraftState>): Draft {
    this.#replace({ ...this.#state, ...part });
    return this.view;
  }

  #replace(state: DraftState): void {
    this.#state = state;
    this.#deps.save(state);
    this.refresh();
  }
}

function led(state: DraftState, stop: LedTo | undefined): DraftState {
  const { roundId, adapterBefore, spindleId, adapterId, proposed }: LedTo = stop ?? nowhere;
  const { gaugeId = proposed?.gaugeId, operatorId = proposed?.operatorId } = state.tag;
  return { ...state, tag: { spindleId, adapterId, gaugeId, operatorId }, roundId, adapterBefore, overrides: {} };
}

const nowhere = { roundId: undefined, adapterBefore: undefined, spindleId: undefined, adapterId: undefined };
