import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { DamageList } from "../../../main/store/ledger/DamageList.ts";
import { compareProjections } from "../../../main/store/projections/compareProjections.ts";
import { rebuildProjections } from "../../../main/store/projections/rebuildProjections.ts";
import { checkSummary } from "../../../main/store/records/checks.ts";
import { readSpindle } from "../../../main/store/records/spindles.ts";
import type { EntryDraft, Store } from "../../../main/store/Store.ts";
import { aCheck, idOf } from "../../support/aCheck.ts";
import { aSpindle } from "../../support/aSpindle.ts";
import { standingByHand } from "../../support/spindleOracle.ts";
import { storeInTemp } from "../../support/storeInTemp.ts";

const unwatched = { progress: () => {}, goOn: () => {} };

function differences(store: Store): string[] {
  const damage = new DamageList();
  compareProjections(store.db, damage, unwatched);
  return damage.kept.map((d) => d.detail);
}

const spindleId = idOf(1);
const operatorId = idOf(4);
const reason = "as agreed on the floor";

/** A check of day `day` in 2024, by its number. */
function check(number: number, day: number, over: Parameters<typeof aCheck>[0] = {}): EntryDraft {
  const measuredAt = new Date(Date.UTC(2024, 0, day, 9)).toISOString();
  return {
    kind: "check",
    body: aCheck({ seed: number, cycleCount: 1, measuredAt, valueN: 24_000 - 10 * number, ...over }),
  };
}
const checkId = (number: number) => aCheck({ seed: number }).checkId;
const numberOf = (id: string | undefined) => (id === undefined ? undefined : Number.parseInt(id.slice(-12), 16) / 1000);

function service(number: number, at: string, newBaseline = true): EntryDraft {
  return {
    kind: "serviceEvent",
    body: { eventId: idOf(9_000_000 + number), spindleId, at, kind: "springs", newBaseline },
  };
}
const choose = (number: number): EntryDraft => ({
  kind: "baselineChoice",
  body: { spindleId, checkId: checkId(number), reason, operatorId: null },
});
const voiding = (number: number): EntryDraft => ({
  kind: "void",
  body: { checkId: checkId(number), reason, operatorId },
});
const release = (number: number): EntryDraft => ({
  kind: "stopRelease",
  body: { spindleId, checkId: checkId(number), reason, operatorId, workOrder: null },
});

function standingAfter(...drafts: EntryDraft[]) {
  const store = storeInTemp();
  store.append([{ kind: "spindle", body: aSpindle() }]);
  for (const draft of drafts) store.append([draft]);
  expect(differences(store)).toEqual([]);
  return readSpindle(store.db, spindleId)!;
}

describe("the baseline", () => {
  const baselineAfter = (...drafts: EntryDraft[]) => numberOf(standingAfter(...drafts).baseline?.checkId);

  it("is the first check of all", () => {
    expect(baselineAfter(check(1, 10), check(2, 20))).toBe(1);
  });

  it("is the first by time of measuring, however late it was filed", () => {
    expect(baselineAfter(check(1, 10), check(2, 5))).toBe(2);
  });

  it("needs a value: a check that could not tell is none", () => {
    expect(baselineAfter(check(1, 10, { valueN: null, verdict: "cannotTell" }), check(2, 20))).toBe(2);
  });

  it("falls back when its check is voided", () => {
    expect(baselineAfter(check(1, 10), check(2, 20), voiding(1))).toBe(2);
    expect(baselineAfter(check(1, 10), voiding(1))).toBeUndefined();
  });

  it("starts anew with the first check after a service that asks for it", () => {
    expect(baselineAfter(check(1, 10), service(1, "2024-01-15"))).toBeUndefined();
    expect(baselineAfter(check(1, 10), service(1, "2024-01-15"), check(2, 20), check(3, 30))).toBe(2);
    expect(baselineAfter(check(1, 10), service(1, "2024-01-15", false), check(2, 20))).toBe(1);
  });

  it("tells before and after on the day of the service by reason, else by order of filing", () => {
    const before = check(2, 15, { reason: "beforeService" });
    const after = check(3, 15, { reason: "afterService" });
    expect(baselineAfter(check(1, 10), before, after, service(1, "2024-01-15"))).toBe(3);
    expect(baselineAfter(check(1, 10), check(2, 15), service(1, "2024-01-15"), check(3, 15))).toBe(3);
  });

  it("is found again when a service is entered late, and when a later note corrects it", () => {
    expect(baselineAfter(check(1, 10), check(2, 20), check(3, 30), service(1, "2024-01-15"))).toBe(2);
    expect(
      baselineAfter(check(1, 10), check(2, 20), check(3, 30), service(1, "2024-01-15"), service(1, "2024-01-25")),
    ).toBe(3);
  });

  it("is the one chosen by hand, until a service after that", () => {
    expect(baselineAfter(check(1, 10), check(2, 20), choose(2))).toBe(2);
    expect(baselineAfter(check(1, 10), check(2, 20), choose(2), service(1, "2024-01-25"), check(3, 30))).toBe(3);
    expect(baselineAfter(check(1, 10), check(2, 20), choose(2), service(1, "2024-01-15"))).toBe(2);
    expect(baselineAfter(service(1, "2024-01-05"), check(1, 10), check(2, 20), choose(2), choose(1))).toBe(1);
  });

  it("falls back to the choice before when the chosen check is voided", () => {
    expect(baselineAfter(check(1, 10), check(2, 20), check(3, 30), choose(2), choose(3), voiding(3))).toBe(2);
    expect(baselineAfter(check(1, 10), check(2, 20), choose(2), voiding(2))).toBe(1);
  });

  it("is what a drop is taken from", () => {
    const standing = standingAfter(check(1, 10, { valueN: 20_000 }), check(2, 20, { valueN: 17_000 }));
    expect(standing.dropFromBaseline).toBeCloseTo(0.15, 12);
    expect(standing.baseline?.isBaseline).toBe(true);
    expect(standing.last?.isBaseline).toBe(false);
  });
});

describe("a stop", () => {
  const stopAfter = (...drafts: EntryDraft[]) => numberOf(standingAfter(...drafts).stop?.checkId);
  const stopping = (number: number, day: number) => check(number, day, { verdict: "stop" });

  it("stays on the spindle though later checks are good, since the first that gave it", () => {
    expect(stopAfter(check(1, 5), stopping(2, 10), stopping(3, 11), check(4, 20))).toBe(2);
  });

  it("goes with a release, and comes again with the next", () => {
    expect(stopAfter(stopping(1, 10), check(2, 12), release(2))).toBeUndefined();
    expect(stopAfter(stopping(1, 10), release(1), stopping(2, 20))).toBe(2);
  });

  it("goes when its check is voided, and falls back to the next that gave it", () => {
    expect(stopAfter(stopping(1, 10), voiding(1))).toBeUndefined();
    expect(stopAfter(stopping(1, 10), stopping(2, 11), voiding(1))).toBe(2);
  });

  it("holds for a check filed after the release though measured before", () => {
    expect(stopAfter(stopping(1, 10), release(1), stopping(2, 9))).toBe(2);
  });

  const old = (number: number, day: number, verdict: "good" | "stop") =>
    check(number, day, { verdict, source: "imported" });

  it("out of an old spreadsheet is history where the spreadsheet goes on with a better check", () => {
    expect(stopAfter(old(1, 5, "stop"), old(2, 10, "good"))).toBeUndefined();
    expect(stopAfter(old(2, 10, "good"), old(1, 5, "stop"))).toBeUndefined();
    expect(stopAfter(old(1, 5, "stop"), old(2, 10, "good"), old(3, 15, "stop"))).toBe(3);
  });

  it("out of an old spreadsheet is history where something better had been measured here before it was imported", () => {
    expect(stopAfter(check(1, 10), old(2, 5, "stop"))).toBeUndefined();
    expect(stopAfter(stopping(1, 10), old(2, 5, "stop"))).toBe(1);
  });

  it("that ends an old spreadsheet stands, and what is measured afterwards does not lift it", () => {
    expect(stopAfter(old(1, 5, "good"), old(2, 10, "stop"))).toBe(2);
    expect(stopAfter(old(2, 10, "stop"), check(3, 20))).toBe(2);
    expect(stopAfter(old(2, 10, "stop"), check(3, 20), release(3))).toBeUndefined();
  });

  it("measured here is not lifted by a later check out of a spreadsheet", () => {
    expect(stopAfter(stopping(1, 10), old(2, 15, "good"))).toBe(1);
  });
});

describe("void and replacement", () => {
  it("leave the check readable with the reason, and count it no more", () => {
    const store = storeInTemp();
    store.append([{ kind: "spindle", body: aSpindle() }, check(1, 10), check(2, 20), voiding(2)]);
    expect(checkSummary(store.db, checkId(2))?.voided).toEqual({ reason, how: "void" });
    expect(readSpindle(store.db, spindleId)).toMatchObject({ checkCount: 1, last: { checkId: checkId(1) } });
  });

  it("put the new check in the place of the old", () => {
    const by = aCheck({ seed: 5, measuredAt: "2024-01-20T09:00:00.000Z", valueN: 21_000 });
    const store = storeInTemp();
    store.append([{ kind: "spindle", body: aSpindle() }, check(1, 10), check(2, 20)]);
    store.append([{ kind: "replacement", body: { checkId: checkId(2), by, reason, operatorId } }]);
    expect(checkSummary(store.db, checkId(2))?.voided).toEqual({ reason, how: "replaced" });
    expect(readSpindle(store.db, spindleId)).toMatchObject({
      checkCount: 2,
      last: { checkId: by.checkId, valueN: 21_000 },
    });
    expect(differences(store)).toEqual([]);
  });

  it("do nothing the second time, or to a check that is not there", () => {
    const standing = standingAfter(check(1, 10), check(2, 20), voiding(2), voiding(2), voiding(77));
    expect(standing.checkCount).toBe(1);
  });
});

describe("projections", () => {
  const step = fc.oneof(
    fc.record({
      what: fc.constant("check" as const),
      day: fc.integer({ min: 1, max: 60 }),
      kind: fc.integer({ min: 0, max: 5 }),
      at: fc.integer({ min: 1, max: 2 }),
      old: fc.boolean(),
    }),
    fc.record({ what: fc.constantFrom("void", "choose", "release", "replace", "mark"), of: fc.nat(40) }),
    fc.record({
      what: fc.constant("service" as const),
      of: fc.nat(3),
      day: fc.integer({ min: 1, max: 60 }),
      anew: fc.boolean(),
      at: fc.integer({ min: 1, max: 2 }),
    }),
  );

  it("say of each spindle what going through all that was filed says", () => {
    const store = storeInTemp();
    store.append([1, 2].map((n) => ({ kind: "spindle" as const, body: aSpindle({ spindleId: idOf(n) }) })));
    let number = 0;
    fc.assert(
      fc.property(fc.array(step, { minLength: 1, maxLength: 70 }), (steps) => {
        const filed: EntryDraft[] = [];
        const first = number + 1;
        const places = [idOf(1_000_000 + 2 * first), idOf(1_000_001 + 2 * first)]; // spindles of this run alone
        store.append(places.map((id) => ({ kind: "spindle" as const, body: aSpindle({ spindleId: id }) })));
        for (const s of steps) {
          number += 1;
          filed.push(draftOf(s, number, "of" in s ? first + (s.of % (number - first + 1)) : 0, places));
          store.append([filed.at(-1)!]);
        }
        for (const id of places) {
          const { checkCount, last, baseline, stop, recent } = readSpindle(store.db, id)!;
          const said = { checkCount, last: last?.checkId, baseline: baseline?.checkId, stop: stop?.checkId };
          expect({ ...said, recent: recent.map((r) => r.valueN) }).toEqual(standingByHand(filed, id));
        }
      }),
      { numRuns: 60 },
    );
    expect(differences(store)).toEqual([]);
    store.append([check(900_001, 10), check(900_002, 20)]);
    rebuildProjections(store);
    expect(differences(store)).toEqual([]);
  });

  it("show a changed, a lost and a strange row when compared", () => {
    const store = storeInTemp();
    store.append([{ kind: "spindle", body: aSpindle() }, check(1, 10), check(2, 20), check(3, 30)]);
    store.db.exec(`UPDATE check_row SET value_n = value_n + 1 WHERE check_id = '${checkId(1)}'`);
    store.db.exec(`DELETE FROM check_row WHERE check_id = '${checkId(2)}'`);
    store.db.exec("INSERT INTO register SELECT kind, 'zz', n, body, sum FROM register");
    expect(differences(store)).toEqual([
      "register spindle zz: the ledger has no such record",
      expect.stringMatching(/^check_row .*: not what the ledger says$/),
      expect.stringMatching(/^check_row .*: the ledger has it, the table does not$/),
    ]);
    rebuildProjections(store);
    expect(differences(store)).toEqual([]);
  });
});

type Step = { what: string; day?: number; kind?: number; at?: number; anew?: boolean; old?: boolean };

function draftOf(step: Step, number: number, of: number, places: readonly string[]): EntryDraft {
  const spindleId = places[(step.at ?? 1) - 1]!;
  const day = Math.min(step.day ?? 1, 28);
  const measuredAt = new Date(Date.UTC(2024, 0, day, 23)).toISOString();
  if (step.what === "void") return voiding(of);
  if (step.what === "choose")
    return { kind: "baselineChoice", body: { spindleId, checkId: checkId(of), reason, operatorId } };
  if (step.what === "release") {
    return { kind: "stopRelease", body: { spindleId, checkId: checkId(of), reason, operatorId, workOrder: null } };
  }
  if (step.what === "mark") return { kind: "remeasureMark", body: { checkIds: [checkId(of)], reason, operatorId } };
  if (step.what === "replace") {
    const by = aCheck({ seed: number, cycleCount: 1, spindleId, measuredAt });
    return { kind: "replacement", body: { checkId: checkId(of), by, reason, operatorId } };
  }
  if (step.what === "service") {
    const at = measuredAt.slice(0, 10);
    return {
      kind: "serviceEvent",
      body: { eventId: idOf(8_000_000 + of), spindleId, at, kind: "gripper", newBaseline: step.anew! },
    };
  }
  const verdict = (["good", "watch", "act", "stop", "cannotTell", "good"] as const)[step.kind!]!;
  const why = (["routine", "beforeService", "afterService", "routine", "complaint", "afterCrash"] as const)[
    (step.kind! + day) % 6
  ]!;
  const valueN = verdict === "cannotTell" ? null : 20_000 + (number % 1000);
  const body = aCheck({
    seed: number,
    cycleCount: 1,
    measuredAt,
    spindleId,
    verdict,
    valueN,
    reason: why,
    source: step.old === true ? "imported" : "measured",
    gaugeId: idOf(30),
  });
  return { kind: "check", body };
}
