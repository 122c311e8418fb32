import { describe, expect, it } from "vitest";
import type { ProofChoices } from "../../../../app/ledger/proof.ts";
import { aboutDraftOf, aboutOf } from "../../../../renderer/screens/proof/plan/aboutDraft.ts";

const choices = (mpe: ProofChoices["mpe"]): ProofChoices => ({
  degree: null,
  mpe,
  rule: { rule: "guarded" },
  resolutionN: null,
  perKelvin: null,
});

describe("the permissible error in the fields", () => {
  it.each([
    { kind: "relative", fraction: 0.01 },
    { kind: "ofGreatest", fraction: 0.005 },
    { kind: "absolute", force: 120 },
  ] as const)("comes back as it was, whatever its kind: $kind", (mpe) => {
    for (const unit of ["N", "kN", "lbf"] as const) {
      const { said, faults } = aboutOf(aboutDraftOf({ choices: choices(mpe) }, undefined, "iso14253", unit));
      expect(faults.size).toBe(0);
      const back = said.choices.mpe!;
      expect(back.kind).toBe(mpe.kind);
      const figure = (one: typeof back) => (one.kind === "absolute" ? one.force : one.fraction);
      expect(figure(back) / figure(mpe)).toBeCloseTo(1, 7);
      expect(said.choices.rule).toEqual({ rule: "guarded" });
    }
  });

  it("is a force in the unit shown, or a share of at most the whole", () => {
    const draft = aboutDraftOf({}, undefined, "iso14253", "kN");
    const typed = (allowed: string, allowedKind: (typeof draft)["allowedKind"]) =>
      aboutOf({ ...draft, allowed, allowedKind });
    expect(typed("0,15", "absolute").said.choices.mpe).toEqual({ kind: "absolute", force: 150 });
    expect(typed("150", "absolute").faults.size).toBe(0);
    expect([...typed("150", "ofGreatest").faults]).toEqual(["allowed"]);
    expect([...typed("0", "absolute").faults]).toEqual(["allowed"]);
    expect(typed("", "absolute").said.choices).toMatchObject({ mpe: null, rule: null });
  });
});
