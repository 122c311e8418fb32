import type { CheckReason } from "../../app/ledger/check.ts";
import { Random } from "../physics/Random.ts";
import { dateAgo, instantAgo, roundsOf } from "./calendar.ts";
import type { DemoRecord } from "./DemoWorks.ts";
import { idMaker } from "./idMaker.ts";
import { demoProofs, demoReference } from "./proofs.ts";
import { type DemoRegister, demoRegister } from "./register.ts";
import { RATE_HZ, seriesLines } from "./seriesLines.ts";
import { gainOf, HISTORY_DAYS, type Story } from "./stories.ts";

/** Standard deviation of the force between two visits to the same spindle, as a share. */
const SEATING = 0.004;

/** How long before the end each hall was last walked through; Hall D is overdue. */
const lastRound = { "Hall A": 6, "Hall B": 13, "Hall C": 20, "Hall D": 118 } as const;

type Visit = { readonly atMs: number; readonly record: () => DemoRecord };

/**
 * The invented works: register, then three years of checks, service events and proofs in the order they happened. Pure: the
 * same seed and end give the same records.
 * @param endMs  the day the history ends, milliseconds since 1970
 */
export function* generateWorks(seed: number, endMs: number): Iterable<DemoRecord> {
  const random = new Random(seed);
  const newId = idMaker(endMs - HISTORY_DAYS * 86_400_000, random.branch());
  const register = demoRegister(newId, (days) => dateAgo(endMs, days));
  yield* register.records;
  const dates = random.branch();
  const rounds = Object.entries(lastRound).flatMap(([area, last]) =>
    roundsOf(area, last, HISTORY_DAYS - 30, endMs, dates),
  );
  const visits: Visit[] = [];
  for (const [order, { story, spindleId }] of register.spindles.entries()) {
    if (story.neverMeasured) continue;
    const own = new VisitMaker(story, spindleId, register, endMs, random.branch());
    const ages = rounds.filter((round) => round.area === story.area).map((round) => round.ageDays);
    visits.push(own.check(HISTORY_DAYS - 8, 480 + order * 14, "baseline"));
    for (const age of ages) visits.push(own.check(age, 480 + (order % 5) * 14, "routine"));
    for (const service of story.services ?? []) {
      visits.push(own.check(service.ageDays + 0.01, 420, "beforeService"));
      visits.push(own.service(service, newId));
      visits.push(own.check(service.ageDays - 0.01, 840, "afterService"));
    }
  }
  const referenceId = newId();
  yield { kind: "reference", body: demoReference(referenceId, (days) => dateAgo(endMs, days)) };
  for (const { atMs, body } of demoProofs(register, referenceId, endMs, random.branch()))
    visits.push({ atMs, record: () => ({ kind: "proof", body }) });
  visits.sort((a, b) => a.atMs - b.atMs);
  for (const visit of visits) yield visit.record();
}

/** Makes the visits of one spindle; each draws from a branch of its own, so that one more visit changes no other. */
class VisitMaker {
  readonly #story: Story;
  readonly #spindleId: string;
  readonly #register: DemoRegister;
  readonly #endMs: number;
  readonly #random: Random;

  constructor(story: Story, spindleId: string, register: DemoRegister, endMs: number, random: Random) {
    this.#story = story;
    this.#spindleId = spindleId;
    this.#register = register;
    this.#endMs = endMs;
    this.#random = random;
  }

  /** @param minute  of the day, by the works' clock; some minutes more or less */
  check(ageDays: number, minute: number, reason: CheckReason): Visit {
    const random = this.#random.branch();
    const when = instantAgo(this.#endMs, Math.round(ageDays), minute + random.below(9));
    return { atMs: when.atMs, record: () => this.#check(ageDays, when, reason, random) };
  }

  service(service: NonNullable<Story["services"]>[number], newId: () => string): Visit {
    const { ageDays, kind, parts, newBaseline } = service;
    const eventId = newId();
    const at = dateAgo(this.#endMs, ageDays);
    const counter = this.#counter(ageDays);
    const { atMs } = instantAgo(this.#endMs, ageDays, 720);
    const made = parts === undefined ? {} : { parts };
    return {
      atMs,
      record: () => ({
        kind: "serviceEvent",
        body: { eventId, spindleId: this.#spindleId, at, kind, ...made, counter, newBaseline },
      }),
    };
  }

  #check(ageDays: number, when: ReturnType<typeof instantAgo>, reason: CheckReason, random: Random): DemoRecord {
    const { gauge: gaugeName, taper, nominalN, wear } = this.#story;
    const gauge = this.#register.gaugeOf(gaugeName);
    const adapter = this.#register.adapterOf(taper);
    const state = wear(ageDays);
    const lines = seriesLines({
      seed: random.below(2 ** 31),
      capacityN: gauge.capacityN,
      nominalN,
      wear: state,
      // How the gauge seats differs from visit to visit (common practice, no source).
      gain: (gainOf(gaugeName, ageDays) / adapter.scale) * (1 + SEATING * random.normal()),
      clampings: 4 + random.below(2),
      zeroN: Math.round(random.normal() * 3) * 10,
    });
    return {
      kind: "check",
      body: {
        spindleId: this.#spindleId,
        adapterId: adapter.adapterId,
        gaugeId: gauge.gaugeId,
        operatorId: this.#register.operatorIds[random.below(2)]!,
        measuredAt: new Date(when.atMs).toISOString(),
        offsetMinutes: when.offsetMinutes,
        reason,
        spindleWarm: random.uniform() < 0.7,
        temperatureC: Math.round((21 + 3 * random.normal()) * 10) / 10,
        counter: this.#counter(ageDays),
        note: noteFor(state.chip !== undefined, reason),
        unit: "kN",
        rateHz: RATE_HZ,
        lines,
      },
    };
  }

  #counter(ageDays: number): number {
    return Math.round(12_000 + (HISTORY_DAYS - ageDays) * this.#story.changesADay * (5 / 7));
  }
}

function noteFor(chipped: boolean, reason: CheckReason): string | null {
  if (chipped) return "Chip found on the taper; cleaned, measured again at the next round.";
  if (reason === "beforeService") return "As found.";
  if (reason === "afterService") return "As left.";
  return null;
}
