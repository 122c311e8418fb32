import type { LinkState } from "../../app/contract/linkViews.ts";
import type { InstrumentStand, ProofWatch, TakeRefusal } from "../../app/contract/proofViews.ts";
import { type NextAct, nextAct } from "../../app/proof/plan/nextAct.ts";
import { tolerance } from "../../app/proof/plan/proofSteps.ts";
import type { Alignment } from "../../app/proof/reference/alignStreams.ts";
import { referenceForce } from "../../app/proof/reference/ReferenceTransducer.ts";
import type { ProofDraft } from "./ProofDraft.ts";
import { StreamLog } from "./StreamLog.ts";
import { alignmentNow, type Instrument, type LiveTaking, standingNow, steadinessNow } from "./standOf.ts";
import { zerosBefore } from "./zerosOf.ts";

/** What the two links say of themselves this moment. */
export type Links = {
  readonly gauge: {
    readonly state: LinkState;
    readonly resolutionN: number | undefined;
    /** The gauge the link was opened for, where that was said. */
    readonly gaugeId: string | undefined;
  };
  readonly reference: { readonly state: LinkState; readonly resolutionN: number | undefined };
};

export type Look = { readonly watch: ProofWatch; readonly taking: LiveTaking | undefined };

/** Overload said so lately still counts; the time offset is worked out anew after so long. */
const OVERLOAD_S = 1;
const ALIGN_EVERY_S = 5;
/** Where the gauge itself must tell whether the load is there, it may be off by more than a load set by hand. */
const GAUGE_BAND = 0.1;

/** The live side of a proof: the streams of both ports, and what could be taken of them for the next act. */
export class LiveWatch {
  readonly gauge = new StreamLog();
  readonly reference = new StreamLog();
  #stands: { readonly targetN: number; readonly sinceS: number } | undefined;
  #alignment: { readonly found: Alignment; readonly atS: number } | undefined;

  /** Time offset between the ports as it was last told; undefined where it is not clear. */
  get offset(): { readonly offsetS: number; readonly halfWidthS: number; readonly correlation: number } | undefined {
    const found = this.#alignment?.found;
    if (found?.kind !== "aligned") return undefined;
    const { offsetS, halfWidthS, correlation } = found;
    return { offsetS, halfWidthS, correlation };
  }

  /** A link was lost or opened: what was read before has no place in time any more. */
  cut(): void {
    this.gauge.clear();
    this.reference.clear();
    this.#stands = undefined;
    this.#alignment = undefined;
  }

  /**
   * Where everything stands now.
   * @param targetN  force wanted by the next act: with weights what they give
   * @param nowS  host's monotonic clock, as the logs were fed
   */
  look(draft: ProofDraft, targetN: number, links: Links, today: string, nowS: number): Look {
    const next = nextAct(draft.planned);
    const read = next.kind === "act" && next.act.kind === "read" ? next.act : undefined;
    const live = draft.referenceRead === "live";
    const readS = read?.readS ?? 1;
    const gauge: Instrument = {
      log: this.gauge,
      capacityN: draft.gauge.capacityN,
      resolutionN: links.gauge.resolutionN,
    };
    const reference = live
      ? {
          log: this.reference,
          capacityN: draft.reference.transducer?.capacityN ?? draft.gauge.capacityN,
          resolutionN: links.reference.resolutionN,
        }
      : undefined;
    const loadN = this.#loadN(draft, next, today);
    const inBand = read !== undefined && loadN !== undefined && isIn(loadN, targetN, draft.gauge.capacityN, live);
    if (!inBand) this.#stands = undefined;
    else if (this.#stands?.targetN !== targetN) this.#stands = { targetN, sinceS: nowS };
    if (reference !== undefined) this.#align(nowS);
    const stoodS = this.#stands === undefined ? 0 : nowS - this.#stands.sinceS;
    const waitS = read?.waitS ?? 0;
    const enough = this.gauge.count >= 5 && (!live || this.reference.count >= 5);
    const standing = inBand && enough ? standingNow(gauge, reference, readS, this.#alignment?.found) : undefined;
    const waited = stoodS >= waitS;
    const why = this.#why(draft, next, {
      links,
      live,
      enough,
      inBand,
      waited,
      targetN,
      loadN,
      taken: standing?.taking,
      nowS,
    });
    const watch: ProofWatch = {
      proofId: draft.proofId,
      index: read === undefined || next.kind !== "act" ? undefined : next.index,
      targetN: read === undefined ? undefined : targetN,
      gauge: this.#stand(gauge, links.gauge.state, readS, this.gauge.lastN),
      reference: reference && this.#stand(reference, links.reference.state, readS, loadN),
      phase: phaseOf(read !== undefined, inBand, waited, why),
      waitLeftS: inBand ? Math.max(0, waitS - stoodS) : waitS,
      readLeftS: Math.max(0, readS - (standing?.stillS ?? 0)),
      why,
      offset: reference && this.#alignment?.found,
    };
    return { watch, taking: why === undefined ? standing?.taking : undefined };
  }

  /** Force on the load train, zero taken off: by the reference where it is read, else by the gauge. */
  #loadN(draft: ProofDraft, next: NextAct, today: string): number | undefined {
    const zeros = zerosBefore(draft.planned, next.kind === "act" ? next.index : 0);
    const { transducer } = draft.reference;
    if (draft.referenceRead !== "live" || transducer === undefined) {
      return this.gauge.lastN === undefined ? undefined : this.gauge.lastN - (zeros?.gaugeN ?? 0);
    }
    const shownN = this.reference.lastN;
    return shownN === undefined
      ? undefined
      : referenceForce(transducer, shownN - (zeros?.referenceN ?? 0), today).forceN;
  }

  #align(nowS: number): void {
    if (this.#alignment !== undefined && nowS - this.#alignment.atS < ALIGN_EVERY_S) return;
    this.#alignment = { found: alignmentNow(this.reference, this.gauge), atS: nowS };
  }

  #stand(instrument: Instrument, state: LinkState, readS: number, forceN: number | undefined): InstrumentStand {
    return { state, forceN: state === "open" ? forceN : undefined, ...steadinessNow(instrument, readS) };
  }

  #why(
    draft: ProofDraft,
    next: NextAct,
    now: {
      readonly links: Links;
      readonly live: boolean;
      readonly enough: boolean;
      readonly inBand: boolean;
      readonly waited: boolean;
      readonly targetN: number;
      readonly loadN: number | undefined;
      readonly taken: LiveTaking | undefined;
      readonly nowS: number;
    },
  ): TakeRefusal | undefined {
    if (next.kind !== "act") return next.kind;
    if (next.act.kind !== "read") return "notNext";
    if (now.links.gauge.state !== "open") return "noLink";
    const { gaugeId } = now.links.gauge;
    if (gaugeId !== undefined && gaugeId !== draft.gauge.gaugeId) return "otherGauge";
    if (now.live && now.links.reference.state !== "open") return "noReferenceLink";
    const capacityN = Math.min(
      draft.gauge.capacityN,
      draft.reference.transducer?.capacityN ?? Number.POSITIVE_INFINITY,
    );
    for (const log of now.live ? [this.gauge, this.reference] : [this.gauge])
      if (log.overloadAtS !== undefined && now.nowS - log.overloadAtS < OVERLOAD_S) return "overload";
    if (now.loadN !== undefined && now.loadN > capacityN * (1 + tolerance.rest)) return "aboveCapacity";
    if (!now.enough) return "tooFewReadings";
    if (!now.inBand) return now.targetN === 0 ? "notUnloaded" : "offTarget";
    if (!now.waited) return "waiting";
    return now.taken === undefined ? "notSteady" : undefined;
  }
}

function isIn(loadN: number, targetN: number, capacityN: number, byReference: boolean): boolean {
  if (targetN === 0) return Math.abs(loadN) <= tolerance.rest * capacityN;
  return Math.abs(loadN - targetN) <= (byReference ? tolerance.load : GAUGE_BAND) * targetN;
}

function phaseOf(isRead: boolean, inBand: boolean, waited: boolean, why: TakeRefusal | undefined): ProofWatch["phase"] {
  if (!isRead) return "idle";
  if (why === undefined) return "ready";
  if (!inBand) return "approach";
  return waited ? "reading" : "waiting";
}
