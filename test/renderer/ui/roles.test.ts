import { describe, expect, it } from "vitest";
import { colourOf, propertyOf, type Role, roles, type Theme } from "../../../renderer/ui/theme/roles.ts";
import { barPath, socketPath, taperPath } from "../../../renderer/ui/verdict/seatMark.ts";
import { ciede2000, labOf } from "../colour/ciede2000.ts";
import { seenWith } from "../colour/colourVision.ts";
import { contrastRatio } from "../colour/contrast.ts";
import { linearRgb, overGround } from "../colour/srgb.ts";

const themes: readonly Theme[] = ["light", "dark"];
const verdicts = ["good", "watch", "act", "stop", "cannotTell"] as const;
const papers: readonly Role[] = ["ground", "sheet", "raised"];
const bands: readonly Role[] = ["bandGood", "bandWatch", "bandStop"];

describe.each(themes)("roles on %s paper", (theme) => {
  const colour = (role: Role) => colourOf(role, theme);

  // WCAG 2.2, 1.4.3 Contrast (Minimum): 4.5 for text. Unrounded, as the criterion says.
  it.each(["ink", "soft", "action", ...verdicts] as const)("%s is read on every paper, 4.5 : 1", (role) => {
    for (const paper of papers) expect(contrastRatio(colour(role), colour(paper)), paper).toBeGreaterThanOrEqual(4.5);
  });

  it.each(["ink", "soft", ...verdicts] as const)("%s is seen on the bands of a chart, 3 : 1 and more", (role) => {
    for (const band of bands) {
      const under = overGround(colour(band), colour("sheet"));
      expect(contrastRatio(colour(role), under), band).toBeGreaterThanOrEqual(
        role === "ink" || role === "soft" ? 4.5 : 3,
      );
    }
  });

  // WCAG 2.2, 1.4.11 Non-text Contrast: 3 for what is needed to find a control and its state.
  it.each(["edge", "focus"] as const)("%s is seen on every paper, 3 : 1", (role) => {
    for (const paper of papers) expect(contrastRatio(colour(role), colour(paper)), paper).toBeGreaterThanOrEqual(3);
  });

  it("the main act's words are read on it", () => {
    expect(contrastRatio(colour("onAction"), colour("action"))).toBeGreaterThanOrEqual(4.5);
  });

  // Words on ink (toasts) and on the loud banner.
  it("paper is read on ink and on act", () => {
    expect(contrastRatio(colour("sheet"), colour("ink"))).toBeGreaterThanOrEqual(4.5);
    expect(contrastRatio(colour("sheet"), colour("act"))).toBeGreaterThanOrEqual(4.5);
  });

  // Least distance 12 in CIEDE2000: common practice, no source (about 1 is just seen, 10 is plain at a glance).
  it.each(["none", "protanopia", "deuteranopia", "tritanopia"] as const)(
    "the five verdicts are apart for eyes with %s",
    (deficiency) => {
      const seen = verdicts.map((verdict) => {
        const rgb = linearRgb(colour(verdict));
        return labOf(deficiency === "none" ? rgb : seenWith(deficiency, rgb));
      });
      for (const [i, one] of seen.entries()) {
        for (const [j, other] of seen.slice(i + 1).entries()) {
          expect(ciede2000(one, other), `${verdicts[i]} and ${verdicts[i + 1 + j]}`).toBeGreaterThan(12);
        }
      }
    },
  );
});

describe("verdict marks", () => {
  it("have five shapes, so that none rests on its colour", () => {
    const shapes = verdicts.map((verdict) => [
      verdict === "cannotTell" ? "dotted" : socketPath,
      taperPath(verdict),
      verdict === "stop" && barPath,
    ]);
    expect(new Set(shapes.map((shape) => JSON.stringify(shape))).size).toBe(5);
  });
});

describe("propertyOf", () => {
  it("names a role as style sheets do", () => {
    expect(Object.keys(roles).map((role) => propertyOf(role as Role))).toContain("--cannot-tell");
  });
});
