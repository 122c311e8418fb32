import type { Parsed } from "../../app/contract/methods.ts";
import type { RunningProof } from "../../app/contract/proofViews.ts";
import { AppError } from "../../app/contract/result.ts";
import type { ReadingBatch } from "../../app/cycle/GaugeStream.ts";
import { nextAct } from "../../app/proof/plan/nextAct.ts";
import {
  confirmAct,
  putDown,
  repeatAct,
  type Stepped,
  skipAct,
  takeReading,
  takeUp,
} from "../../app/proof/plan/proofSteps.ts";
import type { PushHub } from "../host/PushHub.ts";
import { clearProofDraft, loadProofDraft, saveProofDraft } from "../store/proofDraft.ts";
import type { Store } from "../store/Store.ts";
import { type LiveDeps, LiveSide } from "./LiveSide.ts";
import type { Look } from "./LiveWatch.ts";
import type { ProofDraft } from "./ProofDraft.ts";
import { startRefused, takeRefused } from "./refusals.ts";
import { runningProof } from "./runningProof.ts";
import { described, startProof } from "./startProof.ts";
import { type Said, takingOf } from "./takingOf.ts";
import { typedForce } from "./typedForce.ts";

export type DeskDeps = Omit<LiveDeps, "db" | "newId"> & {
  readonly store: Store;
  readonly hub: PushHub;
  readonly now: () => number;
  /** Whether clampings wait on the Measure page: a live proof would stand among them. */
  readonly seriesHasCycles: () => boolean;
  /** The series in work begins anew where the gauge's stream stands now. */
  readonly seriesGoesOn: () => void;
};

/**
 * The one proof in work, however many pages look at it: every act changes the state, is kept, and is told. Nothing that
 * was taken is lost by a refusal, a lost port or a restart.
 */
export class ProofDesk {
  readonly #deps: DeskDeps;
  readonly #live: LiveSide;
  #draft: ProofDraft | undefined;

  constructor(deps: DeskDeps) {
    this.#deps = deps;
    this.#live = new LiveSide(
      { ...deps, db: deps.store.db, newId: () => deps.store.newId() },
      { lost: () => this.#lost("referenceLinkLost"), changed: () => this.#say(), tick: () => this.#tick() },
    );
    this.#draft = loadProofDraft(deps.store.db) as ProofDraft | undefined; // written by `#change`
    // The loads of a rig do not wait for a program: whoever goes on says from where.
    if (!this.isLive) return;
    this.#setAside("restarted");
    this.#live.start();
  }

  /** Whether what the gauge reads now belongs to a proof and not to a series. */
  get isLive(): boolean {
    return this.#draft?.gaugeRead === "live";
  }

  get view(): RunningProof | undefined {
    return this.#draft && runningProof(this.#draft, this.#live.referenceView);
  }

  start(input: Parsed<"proof.start">): RunningProof {
    const { store, now, today } = this.#deps;
    if (this.#draft !== undefined) throw startRefused("another");
    if (input.gaugeRead === "live" && this.#deps.seriesHasCycles()) throw startRefused("seriesInWork");
    if (store.refusal !== undefined) throw new AppError("readOnly", store.refusal.message, { key: "readOnly" });
    this.#draft = startProof(store.db, input, { proofId: store.newId(), nowMs: now(), today: today() });
    this.#change({});
    this.#live.cut();
    if (this.isLive) this.#live.start();
    return this.#told();
  }

  describe(said: Parsed<"proof.describe">): RunningProof {
    this.#change(described(this.mine(said.proofId), said));
    return this.#told();
  }

  confirm({ proofId, index }: Parsed<"proof.confirm">): RunningProof {
    return this.#act(proofId, (draft) => confirmAct(draft.planned, index, this.#at()));
  }

  take({ proofId, index, ...said }: Parsed<"proof.take">): RunningProof {
    const draft = this.mine(proofId);
    const next = nextAct(draft.planned);
    if (next.kind === "act" && next.index !== index) throw takeRefused("notNext");
    if (draft.gaugeRead !== "live") throw takeRefused("noLink");
    const { watch, taking } = this.#live.atHand(draft);
    if (taking === undefined) throw takeRefused(watch.why ?? "notSteady");
    return this.#taken(draft, index, taking, said);
  }

  type({ proofId, index, ...said }: Parsed<"proof.type">): RunningProof {
    return this.#taken(this.mine(proofId), index, undefined, said);
  }

  repeat({ proofId, index, reason }: Parsed<"proof.repeat">): RunningProof {
    return this.#act(proofId, (draft) => repeatAct(draft.planned, index, reason, this.#at()));
  }

  skip({ proofId, index, reason }: Parsed<"proof.skip">): RunningProof {
    return this.#act(proofId, (draft) => skipAct(draft.planned, index, reason, this.#at()));
  }

  putDown({ proofId, reason }: Parsed<"proof.putDown">): RunningProof {
    return this.#act(proofId, (draft) => putDown(draft.planned, reason, this.#at()));
  }

  resume({ proofId, from }: Parsed<"proof.resume">): RunningProof {
    return this.#act(proofId, (draft) => takeUp(draft.planned, from, this.#at()));
  }

  async discard({ proofId }: Parsed<"proof.discard">): Promise<void> {
    this.mine(proofId);
    this.#deps.store.write((db) => clearProofDraft(db));
    await this.ended();
  }

  /** It was filed or thrown away: the gauge is the series' again. */
  async ended(): Promise<void> {
    const wasLive = this.isLive;
    this.#draft = undefined;
    this.#live.stop();
    await this.#live.closeReference();
    if (wasLive) this.#deps.seriesGoesOn();
    this.#deps.hub.say("proof.changed", { proof: undefined });
  }

  async openReference(input: Parsed<"proof.openReference">): Promise<RunningProof> {
    const draft = this.mine(input.proofId);
    if (draft.referenceRead !== "live") throw takeRefused("noReferenceLink");
    await this.#live.openReference(draft, input);
    return this.#told();
  }

  async closeReference({ proofId }: Parsed<"proof.closeReference">): Promise<RunningProof> {
    this.mine(proofId);
    await this.#live.closeReference();
    return this.#told();
  }

  /** The gauge's readings, while it is the proof's. */
  heard(batch: ReadingBatch): void {
    if (this.isLive) this.#live.heard(batch);
  }

  /** The gauge's link was opened or lost. */
  gaugeCut(why: "opened" | "lost"): void {
    if (!this.isLive) return;
    if (why === "lost") this.#lost("linkLost");
    else this.#live.cut();
  }

  async close(): Promise<void> {
    this.#live.stop();
    await this.#live.closeReference();
  }

  /** A port was lost, or the program was: the work so far stands, and waits to be taken up. */
  #setAside(reason: string): void {
    if (this.#draft === undefined) return;
    const stepped = putDown(this.#draft.planned, reason, this.#at());
    if (stepped.kind === "accepted") this.#change({ planned: stepped.state });
  }

  #lost(reason: string): void {
    this.#live.cut();
    this.#setAside(reason);
    this.#say();
  }

  #taken(draft: ProofDraft, index: number, live: Look["taking"], said: Said): RunningProof {
    const next = nextAct(draft.planned);
    if (next.kind !== "act") throw takeRefused(next.kind);
    if (next.index !== index || next.act.kind !== "read") throw takeRefused("notNext");
    const taking = takingOf(draft, index, live, said, this.#deps.today());
    const unit =
      said.indication === undefined ? this.#deps.gauge().unit : typedForce(said.indication, draft.unit, "").unit;
    const stepped = takeReading(draft.planned, index, taking, this.#at());
    if (stepped.kind === "refused") throw takeRefused(stepped.why);
    this.#change({ planned: stepped.state, unit: unit ?? draft.unit, offset: this.#live.offset ?? draft.offset });
    return this.#told();
  }

  /** @throws AppError  with the refusal in words; nothing has changed then */
  #act(proofId: string, step: (draft: ProofDraft) => Stepped): RunningProof {
    const stepped = step(this.mine(proofId));
    if (stepped.kind === "refused") throw takeRefused(stepped.why);
    this.#change({ planned: stepped.state });
    return this.#told();
  }

  #change(part: Partial<ProofDraft>): void {
    if (this.#draft === undefined) return;
    if (part.planned !== undefined) this.#live.forget();
    const draft = { ...this.#draft, ...part };
    this.#draft = draft;
    const { store, now } = this.#deps;
    if (store.refusal === undefined) store.write((db) => saveProofDraft(db, draft, now()));
  }

  /** Tells how steady it is; takes by itself where that was asked for. */
  #tick(): void {
    const draft = this.#draft;
    if (draft === undefined || nextAct(draft.planned).kind !== "act") return;
    const { watch, taking } = this.#live.tell(draft);
    this.#deps.hub.say("proof.watched", watch);
    if (draft.auto && taking !== undefined && watch.index !== undefined) {
      try {
        this.#taken(draft, watch.index, taking, {});
      } catch (cause) {
        if (!(cause instanceof AppError)) throw cause; // what `take` would refuse is refused here too, and shown
      }
    }
  }

  /** The draft, when the caller means the proof that is in work. @throws AppError  another, or none, is in work */
  mine(proofId: string): ProofDraft {
    if (this.#draft?.proofId === proofId) return this.#draft;
    throw new AppError(
      "conflict",
      "This proof was filed or discarded on another page meanwhile. Look at what is shown now.",
      {
        key: "proof.gone",
      },
    );
  }

  #told(): RunningProof {
    this.#say();
    return this.view!; // each caller has just worked on it
  }

  #say(): void {
    this.#deps.hub.say("proof.changed", { proof: this.view });
  }

  #at(): string {
    return new Date(this.#deps.now()).toISOString();
  }
}
