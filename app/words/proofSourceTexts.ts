import { inBoth } from "./inBoth.ts";

/** What the lines of a proof's budget come from. */
export const proofSourceTexts = inBoth({
  reference: ["the reference force", "die Referenzkraft"],
  curve: ["the curve's own scatter", "die Streuung der Kurve selbst"],
  repeatability: ["repeatability, without turning", "Wiederholbarkeit, ohne Drehen"],
  reproducibility: ["reproducibility, from run to run", "Vergleichbarkeit, von Lauf zu Lauf"],
  interpolation: ["what the curve misses", "was die Kurve verfehlt"],
  resolution: ["the gauge's last digit", "die letzte Stelle des Messgeräts"],
  zero: ["change of the zero", "Änderung der Null"],
  creep: ["creep", "Kriechen"],
  reversibility: ["falling against rising loads", "fallende gegen steigende Lasten"],
  temperature: ["temperature", "Temperatur"],
});
