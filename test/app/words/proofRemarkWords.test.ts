import { describe, expect, it } from "vitest";
import { proofRemarkWords } from "../../../app/words/proofRemarkWords.ts";
import { createSpeech } from "../../../app/words/Speech.ts";

const de = createSpeech("de", "de-DE");
const en = createSpeech("en", "en-GB");

describe("proofRemarkWords", () => {
  it("puts the few English words between the figures into German too", () => {
    expect(proofRemarkWords({ code: "fewSteps", about: "5 of 8" }, de)).toBe(
      "Weniger Stufen, als das Verfahren verlangt: 5 von 8.",
    );
    expect(proofRemarkWords({ code: "loadOutOfOrder", about: "run 2, 5.5 after 6" }, de)).toBe(
      "Eine steigende Reihe fällt: Lauf 2, 5,5 nach 6.",
    );
    expect(
      proofRemarkWords({ code: "rangeTooShort", about: "the lowest load must be at most 20 % of the greatest" }, de),
    ).toBe("Die Lasten reichen nicht weit genug hinunter: die kleinste Last darf höchstens 20 % der größten sein.");
    expect(proofRemarkWords({ code: "creepLarge", about: "0.31 % over 0.15 %" }, de)).toContain("0,31 % über 0,15 %");
  });

  it("leaves them as they stand in English", () => {
    expect(proofRemarkWords({ code: "fewSteps", about: "5 of 8" }, en)).toBe(
      "Fewer steps than the method asks for: 5 of 8.",
    );
  });

  it("shows the code of a newer program rather than nothing", () => {
    expect(proofRemarkWords({ code: "notYetKnown", about: "x" }, en)).toBe("notYetKnown: x");
  });
});
