import { describe, expect, it } from "vitest";
import { adapterFactor } from "../../../app/proof/after/adapterFactor.ts";
import { gaugeCurveOf } from "../../../app/proof/after/gaugeCurveOf.ts";
import type { ProofReading } from "../../../app/proof/data/ProofReading.ts";
import { iso376Proof } from "../../../app/proof/iso376/iso376Proof.ts";
import { carriesDegree } from "../../../app/proof/method/carriesDegree.ts";
import { isRefused, type ProofRefused } from "../../../app/proof/method/ProofOptions.ts";
import { polynomialProof } from "../../../app/proof/method/polynomialProof.ts";
import { workingCheck } from "../../../app/proof/working/workingCheck.ts";
import { proofRefusalWords } from "../../../app/words/proofRefusalWords.ts";
import { replacedReason, runBegunAnew } from "../../../app/words/replacedReason.ts";
import { createSpeech } from "../../../app/words/Speech.ts";

const de = createSpeech("de", "de-DE");
const en = createSpeech("en", "en-GB");

const refusalOf = (got: object | undefined): ProofRefused => {
  if (got === undefined || !isRefused(got)) throw new Error("this was to be refused");
  return got;
};
const loads = (pairs: readonly (readonly [number, number])[]): ProofReading[] =>
  pairs.map(([reference, indication]) => ({
    reference,
    indication,
    direction: "up",
    run: "1",
    step: undefined,
    positionDeg: 0,
  }));
const curveOf = (pairs: readonly (readonly [number, number])[]) => {
  const proof = polynomialProof(loads(pairs), { degree: 1 });
  if (isRefused(proof)) throw new Error(proof.refused);
  return gaugeCurveOf(proof, { reference: "N", indication: "N" }, 1);
};
const pair = (net: number) => ({
  run: "1",
  without: { reference: 1000, net: 1000 },
  withIt: { reference: 1000, net },
});

describe("what the mathematics of a proof refuses", () => {
  it.each([
    ["degreeRange", carriesDegree(9, 9, 13, true), [13], "Eine Kurve hat einen Grad von 1 bis 12, nicht 13"],
    [
      "tooFewLoads",
      carriesDegree(2, 9, 3, true),
      [3, 4, 2],
      "Grad 3 braucht mindestens 4 verschiedene Lasten, die Messwerte haben 2: mehr Lasten lesen oder einen niedrigeren Grad wählen",
    ],
    [
      "noReadingOver",
      carriesDegree(4, 4, 3, true),
      [3, 4, 4],
      "Grad 3 hat 4 Koeffizienten, und es gibt 4 Messwerte: Keiner bleibt übrig, um die Kurve zu beurteilen",
    ],
    ["iso376Degree", iso376Proof([], { degree: 4 }), [4], "ISO 376 kennt Kurven vom Grad 1, 2 und 3, nicht 4"],
    [
      "noLoad",
      workingCheck([], undefined, { rule: "guarded" }, {}),
      [],
      "Eine Arbeitsprüfung braucht mindestens einen Messwert unter einer Last über null",
    ],
    [
      "notRising",
      curveOf([
        [1000, 3000],
        [2000, 2000],
        [3000, 1000],
      ]),
      [],
      "Die Anzeige steigt nicht überall mit der Kraft: Aus ihr lässt sich keine Kurve zurücklesen",
    ],
    [
      "notAboveZero",
      curveOf([
        [1000, -3000],
        [2000, -2000],
        [3000, -1000],
      ]),
      [],
      "Die Anzeige liegt unter der größten Last nicht über null",
    ],
    [
      "factorNotAboveZero",
      adapterFactor([pair(0)]),
      [],
      "Jede Last und jede Nettoanzeige der Prüfung eines Adapters muss über null liegen",
    ],
    [
      "factorRuns",
      adapterFactor([pair(990)]),
      [1],
      "Der Faktor eines Adapters braucht mindestens zwei Läufe, nicht 1: Seine Streuung von Sitz zu Sitz wäre unbekannt",
    ],
  ])("%s: names code and figures, and reads in German", (code, got, figures, german) => {
    const { refused, why } = refusalOf(got);
    expect(why).toEqual({ code, figures });
    expect(proofRefusalWords({ said: refused, why }, de)).toBe(german);
    expect(proofRefusalWords({ said: refused, why }, en)).toBe(refused);
    expect(refused).not.toMatch(/#\d/);
  });

  it("keeps the sentence of an entry older than the codes, and of a newer program's code", () => {
    expect(proofRefusalWords({ said: "the readings carry no curve" }, de)).toBe("the readings carry no curve");
    const why = { code: "notYetKnown", figures: [1] };
    expect(proofRefusalWords({ said: "something new", why }, de)).toBe("something new");
    expect(proofRefusalWords({ said: null }, de)).toBe("");
  });
});

describe("why a taking was taken again", () => {
  it("reads in German where the program said it, and stays as it is where somebody wrote it", () => {
    expect(replacedReason(runBegunAnew, de)).toBe("der Lauf wurde von vorn begonnen");
    expect(replacedReason(runBegunAnew, en)).toBe("the run was begun anew");
    expect(replacedReason("bench was knocked", de)).toBe("bench was knocked");
  });
});
