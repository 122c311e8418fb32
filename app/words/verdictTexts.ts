import { inBoth } from "./inBoth.ts";

/** The five answers, always beside their mark. */
export const verdictTexts = inBoth({
  good: ["good", "gut"],
  watch: ["watch", "beobachten"],
  act: ["act", "handeln"],
  stop: ["stop", "Stopp"],
  cannotTell: ["cannot tell", "unklar"],
  never: ["not measured", "nie gemessen"],
});
