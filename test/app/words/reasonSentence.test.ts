import { describe, expect, it } from "vitest";
import { reasonSentence } from "../../../app/words/reasonSentence.ts";
import { reasonSentences } from "../../../app/words/reasonSentences.ts";
import { createSpeech } from "../../../app/words/Speech.ts";

const english = createSpeech("en", "en-GB");
const german = createSpeech("de", "de-DE");
const plain = (text: string) => text.replace(/\u00a0/g, " ");

describe("reasonSentence", () => {
  it("says what decided, with the value's uncertainty and the reader's decimal mark", () => {
    const reason = { code: "belowMinimum", valueN: 13_900, limitN: 14_400, expandedN: 0 };
    expect(plain(reasonSentence(reason, english, "kN", 171))).toBe(
      "13.90 ± 0.17 kN lies below the minimum of 14.40 kN.",
    );
    expect(plain(reasonSentence(reason, german, "kN", 171))).toBe(
      "13,90 ± 0,17 kN liegt unter der Mindestkraft von 14,40 kN.",
    );
  });

  it("says below for a fall and above for a rise", () => {
    const held = { code: "holdsBaseline", otherN: 18_160, share: 0.012 };
    expect(plain(reasonSentence(held, english, "kN"))).toBe("It holds its baseline: 1.2 % below 18.16 kN.");
    expect(plain(reasonSentence({ ...held, share: -0.012 }, english, "kN"))).toContain("above");
  });

  it("never claims certainty: odds beyond 99.9 % are said as such", () => {
    const sure = { code: "withinLimits", valueN: 17_000, limitN: 14_400, probability: 0.999999 };
    expect(plain(reasonSentence(sure, english, "kN"))).toContain("> 99.9 %");
  });

  it("shows a code it does not know as it stands", () => {
    expect(reasonSentence({ code: "writtenByANewerProgram" }, english, "kN")).toBe("writtenByANewerProgram");
  });

  it("leaves no figure open in any sentence", () => {
    for (const code of Object.keys(reasonSentences)) {
      const full = { code, valueN: 1000, limitN: 900, otherN: 950, expandedN: 10, share: 0.1, probability: 0.97 };
      for (const speech of [english, german])
        expect(reasonSentence(full, speech, "kN"), code).not.toMatch(/undefined|\?/);
    }
  });
});
