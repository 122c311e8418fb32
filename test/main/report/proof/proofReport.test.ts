import { describe, expect, it } from "vitest";
import type { Proof } from "../../../../app/ledger/proof.ts";
import { refuse } from "../../../../app/proof/method/proofRefusal.ts";
import { proofReport } from "../../../../main/report/proof/proofReport.ts";
import type { About } from "../../../../main/report/records/About.ts";
import { writingOf } from "../../../../main/report/records/Writing.ts";
import type { Store } from "../../../../main/store/Store.ts";
import { idOf } from "../../../support/aCheck.ts";
import { aProof } from "../../../support/aProof.ts";
import { pdfText } from "../../../support/pdfText.ts";
import { provedStore } from "../../../support/provedStore.ts";
import { storeInTemp } from "../../../support/storeInTemp.ts";

const about = ({ db, demo }: Store, over: Partial<About> = {}): About => ({
  db,
  nowMs: Date.UTC(2026, 2, 4, 9),
  paper: "A4",
  write: writingOf("en"),
  version: "0.1.0",
  programHash: "ab".repeat(32),
  demo,
  goOn: () => {},
  ...over,
});
const flat = (text: string) => text.replace(/\s+/g, " ");

describe("the report of a proof", () => {
  it("names gauge, customer, method and edition, conditions, reference, who and when", async (context) => {
    const { store, left } = provedStore();
    const text = flat(pdfText(context, await proofReport(about(store), left.proofId)));
    for (const said of [
      "Proof of Gauge",
      "Classes after ISO 376, as left, 2 Mar 2026",
      "Toolroom, hall B",
      "own copy of 2011",
      "21 °C (moved by 1 K)",
      "1000.0 hPa",
      "Typed loads",
      "no certificate is on record",
      "page 1 of",
      "Proved by",
    ])
      expect(text).toContain(said);
  });

  it("gives every step its error, expanded uncertainty and coverage factor, as filed", async (context) => {
    const { store, left } = provedStore();
    const text = flat(pdfText(context, await proofReport(about(store), left.proofId)));
    for (const step of left.result!.steps) {
      const figures = [step.referenceN.toFixed(1), String(step.n), step.netN.toFixed(1)].join(" ");
      expect(text).toContain(figures);
      expect(text).toContain(
        [step.uncertainty.expandedN.toFixed(2), step.uncertainty.expandedPct!.toFixed(3)].join(" "),
      );
    }
    expect(text).toContain("for about 95 % coverage");
    expect(text).toContain("u1 the reference force");
    expect(text).toContain("x^3");
  });

  it.for([
    ["polynomial", "p of the next term"],
    ["astm-e74", "had to fall by more than"],
  ] as const)("prints the degrees that were compared by %s, and which was chosen", async ([method, head], context) => {
    const proof = aProof({ method });
    const store = storeInTemp();
    store.append([
      { kind: "gauge", body: proof.gauge },
      { kind: "proof", body: proof },
    ]);
    const text = flat(pdfText(context, await proofReport(about(store), proof.proofId)));
    const { degreeTrials, fit } = proof.result!;
    expect(degreeTrials.length).toBeGreaterThan(2);
    expect(text).toContain(head);
    expect(text).toContain(`${fit!.degree} (chosen)`);
    for (const { degree, pNext, ratio } of degreeTrials) {
      if (typeof pNext === "number")
        expect(text).toMatch(new RegExp(`\\b${degree}(?: \\(chosen\\))? ${pNext.toFixed(3)}`));
      if (typeof ratio === "number") expect(text).toContain(ratio.toPrecision(4));
    }
  });

  it("prints no degrees where one was given or none are compared", async (context) => {
    const { store, left } = provedStore();
    expect(flat(pdfText(context, await proofReport(about(store), left.proofId)))).not.toContain(
      "degrees that were compared",
    );
  });

  it("tells class and what to check it against, as found and as left with the adjustment between, and the drift", async (context) => {
    const { store, left, found } = provedStore();
    const text = flat(pdfText(context, await proofReport(about(store), left.proofId)));
    expect(text).toContain("Class 0.5 from 3000.0 N to 30000.0 N");
    expect(text).toContain("check them against your edition of the standard");
    expect(text).toMatch(/Between them, on 2 Mar 2026, 11:10 .*: span turned down by half a turn\./);
    expect(text).toMatch(/as found 2 Mar 2026 .* 0\.800 %/);
    expect(text).toMatch(/2 Mar 2025 2 Mar 2026 .*0\.69\d %/);
    const other = flat(pdfText(context, await proofReport(about(store), found.proofId)));
    expect(other).toContain("as found (this proof)");
  });

  it("says in plain sight that it is no accredited certificate, until the laboratory says what it is", async (context) => {
    const plain = provedStore();
    const without = pdfText(context, await proofReport(about(plain.store), plain.left.proofId));
    expect(without.match(/Not an accredited certificate\./g)!.length).toBeGreaterThan(4); // in the frame and at each foot
    const { store, left } = provedStore((proof) => ({
      ...proof,
      accreditation: "Accredited for force, no. 12 (invented)",
    }));
    const text = pdfText(context, await proofReport(about(store), left.proofId));
    expect(flat(text)).toContain("in the words of the laboratory Accredited for force, no. 12 (invented)");
    expect(text).not.toContain("Not an accredited certificate");
  });

  it("gives the reason where there is no class, and the raw errors all the same", async (context) => {
    const { store, left } = provedStore((proof) => ({
      ...proof,
      judged: "cannotTell",
      result: { ...proof.result!, class: null, classRanges: [], missing: [{ code: "needsPositions", about: "one" }] },
    }));
    const text = flat(pdfText(context, await proofReport(about(store), left.proofId)));
    expect(text).toContain("No class: The method needs rising series at three mounting positions; found: one.");
    expect(text).toContain(left.result!.steps[4]!.errorN.toFixed(1));
  });

  it("names rule and permissible error where conformity is stated, and that none is stated elsewhere", async (context) => {
    const stated = (proof: Proof): Proof => {
      const result = aProof({ seed: 5, method: "working" }).result!;
      const steps = result.steps.map((step) => ({
        ...step,
        permissibleN: 0.005 * step.referenceN,
        conformity: "conforming" as const,
        probabilityConforming: 0.999,
      }));
      return {
        ...proof,
        choices: { ...proof.choices, mpe: { kind: "relative", fraction: 0.005 }, rule: { rule: "guarded" } },
        result: { ...result, conformity: "conforming", steps },
      };
    };
    const { store, left, found } = provedStore(stated);
    const text = flat(pdfText(context, await proofReport(about(store), left.proofId)));
    expect(text).toMatch(/permissible error 0\.50 % of the load/);
    expect(text).toMatch(/decision rule guarded/);
    expect(text).toContain("all steps together conforming");
    const none = flat(pdfText(context, await proofReport(about(store), found.proofId)));
    expect(none).toContain("None is made: no permissible error was stated");
  });

  it("asks for no check of limits that the laboratory has entered, and names its edition", async (context) => {
    const { store, left } = provedStore((proof) => ({
      ...proof,
      result: {
        ...proof.result!,
        remarks: proof.result!.remarks.map((one) =>
          one.code === "tableFromMemory" ? { code: "tableEntered" as const, about: "ISO 376:2011, our copy" } : one,
        ),
      },
    }));
    const text = flat(pdfText(context, await proofReport(about(store), left.proofId)));
    expect(text).not.toMatch(/your edition/);
    expect(text).toContain("entered them by its edition: ISO 376:2011, our copy.");
  });

  it("names a plan of the laboratory's own, and no name for a method's usual one", async (context) => {
    const own = provedStore((proof) => ({ ...proof, plan: { ...proof.plan, name: "Toolroom, yearly" } }));
    const text = flat(pdfText(context, await proofReport(about(own.store), own.left.proofId)));
    expect(text).toMatch(/plan Toolroom, yearly/);
    const usual = flat(pdfText(context, await proofReport(about(own.store), own.found.proofId)));
    expect(usual).not.toMatch(/ plan ISO 376/);
  });

  it("lists every reading as it was taken, also one that was taken again, with the reason", async (context) => {
    const { store, left } = provedStore((proof) => ({
      ...proof,
      takings: proof.takings.map((taking, i) =>
        i === 3 ? { ...taking, replaced: { at: taking.at, reason: "the bench was knocked" } } : taking,
      ),
    }));
    const text = flat(pdfText(context, await proofReport(about(store, { paper: "Letter" }), left.proofId)));
    expect(text).toMatch(/taken again: the bench was\s+knocked/);
    for (const { indicationN } of left.takings.slice(0, 12)) expect(text).toContain(String(indicationN).slice(0, 7));
  });

  it("is written in German, decimal commas and all", async (context) => {
    const { store, left } = provedStore();
    const text = flat(
      pdfText(context, await proofReport(about(store, { write: writingOf("de") }), left.proofId), "de"),
    );
    for (const said of [
      "Kein akkreditiertes Zertifikat.",
      "Klassen nach ISO 376, wie hinterlassen, 2. März 2026",
      "Klasse 0,5 von 3000,0 N bis 30000,0 N",
      "mit Ihrer Ausgabe der Norm vergleichen",
      "Unsicherheitsbudget",
      "Seite 1 von",
    ])
      expect(text).toContain(said);
    expect(text).not.toMatch(/\d\.\d+ (N|%)/);
    expect(text.replace(/own copy of|span turned down by half a turn|by key/g, "")).not.toMatch(
      /\b(the|and|with|of|not|class|step|from|curve|reading)\b/,
    );
  });

  it("says in German too why there is no result, and why no curve", async (context) => {
    const inGerman = async (change: (proof: Proof) => Proof) => {
      const { store, left } = provedStore(change);
      return flat(pdfText(context, await proofReport(about(store, { write: writingOf("de") }), left.proofId), "de"));
    };
    const { refused, why: refusedWhy } = refuse("tooFewLoads", 3, 4, 2);
    const none = await inGerman((proof) => ({ ...proof, result: null, curve: null, refused, refusedWhy }));
    expect(none).toContain("Grad 3 braucht mindestens 4 verschiedene Lasten, die Messwerte haben 2:");
    const { refused: curveRefused, why: curveRefusedWhy } = refuse("notRising");
    const noCurve = await inGerman((proof) => ({ ...proof, curve: null, curveRefused, curveRefusedWhy }));
    expect(noCurve).toContain("Keine Kurve zum Berichtigen: Die Anzeige steigt nicht überall mit der Kraft:");
    const older = await inGerman((proof) => ({ ...proof, result: null, curve: null, refused }));
    expect(older).toContain("degree 3 needs at least 4 different loads");
  });

  it("is of a proof that is there", async () => {
    const { store } = provedStore();
    await expect(proofReport(about(store), idOf(77_777))).rejects.toMatchObject({ code: "notFound" });
  });

  it("of three runs and ten steps is made in under two seconds", async () => {
    const { store, left } = provedStore((proof) => ({
      ...aProof({ seed: 9, method: "astm-e74" }),
      proofId: proof.proofId,
    }));
    expect(left.plan.runs).toHaveLength(3);
    expect(left.plan.loadsN).toHaveLength(10);
    const before = performance.now();
    await proofReport(about(store), left.proofId);
    expect(performance.now() - before).toBeLessThan(2_000);
  });
});
