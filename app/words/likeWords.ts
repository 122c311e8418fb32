import type { LikeComparison } from "../trend/compareLike.ts";
import { inBoth } from "./inBoth.ts";
import type { Speech } from "./Speech.ts";

const likeTexts = inBoth({
  lowerShort: ["lower than its like", "niedriger als ihresgleichen"],
  fasterShort: ["falls faster than its like", "fällt schneller als ihresgleichen"],
  lower: [
    (own: string, usual: string, n: number) =>
      `lower than its like: ${own} of nominal, ${usual} is usual among these ${n}`,
    (own: string, usual: string, n: number) =>
      `niedriger als ihresgleichen: ${own} der Sollkraft, üblich sind ${usual} bei diesen ${n}`,
  ],
  faster: [
    (own: string, usual: string, n: number) =>
      `changes by ${own} of nominal a year, ${usual} is usual among these ${n} of its kind`,
    (own: string, usual: string, n: number) =>
      `ändert sich um ${own} der Sollkraft im Jahr, üblich sind ${usual} bei diesen ${n} ihrer Art`,
  ],
});

const byLevel = ({ levelZ, perYearZ }: LikeComparison) => (levelZ ?? 0) <= (perYearZ ?? 0);

/** In a few words, how a spindle stands out from those of its kind; undefined where it does not. */
export function likeShort(like: LikeComparison | undefined, speech: Speech): string | undefined {
  if (like === undefined || !like.standsOut) return undefined;
  const words = likeTexts[speech.language];
  return byLevel(like) ? words.lowerShort : words.fasterShort;
}

/** The same with its figures, without capital and full stop. */
export function likeWords(like: LikeComparison | undefined, speech: Speech): string | undefined {
  if (like === undefined || !like.standsOut) return undefined;
  const words = likeTexts[speech.language];
  const share = (value: number) => speech.percent(value, 1);
  const { perYear, medianPerYear } = like;
  return byLevel(like) || typeof perYear !== "number" || typeof medianPerYear !== "number"
    ? words.lower(speech.percent(like.level), speech.percent(like.medianLevel), like.n)
    : words.faster(share(perYear), share(medianPerYear), like.n);
}
