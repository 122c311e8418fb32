import { act, fireEvent, screen, within } from "@testing-library/react";
import { afterEach, beforeAll, describe, expect, it } from "vitest";
import type { AffectedView } from "../../../../app/contract/proofViews.ts";
import type { Reference } from "../../../../app/ledger/proof.ts";
import "../../../../renderer/screens/proof/ProofPlaces.tsx";
import { refuse } from "../../../../app/proof/method/proofRefusal.ts";
import { idOf } from "../../../support/aCheck.ts";
import { aProof } from "../../../support/aProof.ts";
import type { createFakeCore } from "../../../support/fakeCore.ts";
import { closePage, faults, openPage, type Page, press, settle, standInBrowser } from "../../../support/page.tsx";

const reference: Reference = {
  referenceId: idOf(20),
  name: "Certificate 7",
  kind: "typed",
  typed: { relative: 2e-4, standardN: 0 },
  state: "inUse",
};
const transducer: Reference = {
  referenceId: idOf(21),
  name: "Reference 50 kN",
  kind: "transducer",
  transducer: {
    curve: { version: 1, coefficients: [0, 1], fromN: 0, toN: 50_000, uncertainty: [{ atN: 50_000, relative: 2e-4 }] },
    capacityN: 50_000,
    calibratedOn: "2020-01-01",
    dueOn: "2021-01-01",
    driftPerYear: 0,
  },
  state: "inUse",
};

const goTo = async (hash: string) => {
  await act(async () => {
    location.hash = hash;
    dispatchEvent(new HashChangeEvent("hashchange"));
  });
  await settle();
};

async function openAt(
  hash: (page: Page) => string,
  prepare: (page: Page) => void = () => {},
  options: Parameters<typeof createFakeCore>[0] = {},
): Promise<Page> {
  const page = await openPage("#/records", options);
  page.fake.state.proofs.references = [reference];
  prepare(page);
  await goTo(hash(page));
  return page;
}

const gaugeIdOf = (page: Page) => page.fake.state.gauges[0]!.gauge.gaugeId;
const planAt = (page: Page) => `#/gauges/${gaugeIdOf(page)}/prove`;

/** Begins a typed working check of two loads in one run. */
async function begin(page: Page): Promise<void> {
  fireEvent.click(screen.getByLabelText("typed in"));
  const remove = (name: RegExp, leave: number) => {
    while (screen.getAllByRole("button", { name }).length > leave)
      fireEvent.click(screen.getAllByRole("button", { name }).at(-1)!);
  };
  remove(/^Remove load/, 2);
  remove(/^Remove run/, 2);
  fireEvent.click(screen.getByRole("button", { name: "To the cautions" }));
  await settle();
  expect(page.fake.state.proofs.draft?.planned.plan.loadsN).toEqual([6000, 12_000]);
}

const typeShown = async (text: string) => {
  fireEvent.change(screen.getByLabelText("The gauge shows"), { target: { value: text } });
  fireEvent.click(screen.getByRole("button", { name: "Take these" }));
  await settle();
};
/** Two checks in doubt, of which one would say something else. */
function inDoubt({ fake }: Page, since: AffectedView["since"]): AffectedView {
  const [one, two] = fake.state.checks;
  const doubt = {
    filedVerdict: "good",
    filedN: 17_900,
    correctedN: 14_000,
    relative: -0.2,
    marked: false,
  } as const;
  return {
    since,
    foundOn: "2026-03-02",
    changedCount: 1,
    rows: [
      { ...doubt, checkId: one!.checkId, row: one!, spindleName: "Mill 1", wouldBe: "stop", verdictChanges: true },
      { ...doubt, checkId: two!.checkId, row: two!, spindleName: "Mill 2", wouldBe: "good", verdictChanges: false },
    ],
  };
}
const said = () => document.querySelector(".proof-lead h2.what")!.textContent!.replaceAll("\u00a0", " ");

describe("the plan of a proof", () => {
  beforeAll(standInBrowser);
  afterEach(closePage);

  it("takes the usual plan of the method that is chosen, and says how much it is", async () => {
    await openAt(planAt);
    expect(screen.getByText(/^5 loads, 3 runs, 21 readings/)).toBeTruthy();
    fireEvent.click(screen.getByLabelText("Classes after ISO 376"));
    expect(screen.getByText(/^10 loads, 4 runs/)).toBeTruthy();
  });

  it("says at the load that it lies above the gauge's capacity, and does not begin", async () => {
    const page = await openAt(planAt);
    fireEvent.change(screen.getByLabelText("Load 5"), { target: { value: "31" } });
    const field = screen.getByLabelText("Load 5").closest(".field")!;
    expect(field.textContent!.replaceAll("\u00a0", " ")).toContain("31.00 kN lies above the gauge's capacity.");
    fireEvent.click(screen.getByRole("button", { name: "To the cautions" }));
    await settle();
    expect(page.fake.state.proofs.draft).toBeUndefined();
  });

  it("lets a proof begin against a reference past its due date, and says so at the field", async () => {
    await openAt(planAt, (page) => {
      page.fake.state.proofs.references = [transducer];
    });
    expect(screen.getByLabelText("Reference").closest(".field")!.textContent).toContain(
      "was due for its own calibration on Jan 1, 2021",
    );
    fireEvent.click(screen.getByRole("button", { name: "To the cautions" }));
    await settle();
    expect(said()).toBe("Before the first load");
  });

  it("does not begin when a further reference is saved on the way", async () => {
    const page = await openAt(planAt);
    fireEvent.click(screen.getByRole("button", { name: "Add a reference" }));
    const dialog = within(screen.getByRole("dialog"));
    fireEvent.change(dialog.getByLabelText("Name"), { target: { value: "Certificate 8" } });
    fireEvent.click(dialog.getByLabelText("typed values"));
    fireEvent.change(dialog.getByLabelText("U (k = 2), % of the value"), { target: { value: "0.02" } });
    fireEvent.click(dialog.getByRole("button", { name: "Save" }));
    await settle();
    expect(page.fake.state.proofs.references.map(({ name }) => name)).toEqual(["Certificate 7", "Certificate 8"]);
    expect(page.fake.state.proofs.draft).toBeUndefined();
    expect(screen.getByLabelText<HTMLSelectElement>("Reference").selectedOptions[0]!.text).toContain("Certificate 8");
  });

  it("says what a reference is where there is none, and asks for one", async () => {
    const page = await openAt(planAt, ({ fake }) => {
      fake.state.proofs.references = [];
    });
    expect(screen.getByText("No reference yet")).toBeTruthy();
    fireEvent.click(screen.getByRole("button", { name: "To the cautions" }));
    expect(screen.getByText("Choose what it is proved against.")).toBeTruthy();
    expect(page.fake.state.proofs.draft).toBeUndefined();
    expect(await faults()).toEqual([]);
  });
});

describe("the led proof", () => {
  beforeAll(standInBrowser);
  afterEach(closePage);

  it("shows the cautions first, then one act at a time, and files what was typed", async () => {
    const page = await openAt(planAt);
    await begin(page);
    expect(screen.getByText(/Nobody under or beside the load/)).toBeTruthy();
    expect(await faults()).toEqual([]);
    await press(" ");
    expect(said()).toBe("Mount the gauge at 0°");
    await press(" ");
    expect(said()).toBe("Preload to 12.00 kN and unload; nothing is read");
    await press(" ");
    for (const run of [1, 2]) {
      if (run === 2) {
        expect(said()).toBe("Turn the gauge to 120°");
        await press(" ");
        await press(" ");
      }
      expect(said()).toBe("Unload: zero before the loads");
      await typeShown("0.01");
      expect(said()).toBe("Load up to 6.00 kN");
      if (run === 1) expect(await faults()).toEqual([]);
      await typeShown("6,02");
      await typeShown("12.03 kN");
      await typeShown("0.01");
    }
    expect(screen.getByRole("heading", { level: 1 }).textContent).toBe("Result of the proof of Gauge 1");
    await settle();
    // 6.02 less its zero against 6 kN: 0.01 kN, 0.167 %.
    const steps = within(screen.getByRole("region", { name: "Step by step" }));
    expect(steps.getAllByRole("row")[1]!.textContent).toContain("0.167");
    expect(screen.getByText("This is not an accredited certificate.")).toBeTruthy();
    expect(await faults()).toEqual([]);
    fireEvent.click(screen.getByRole("button", { name: /^File this proof/ }));
    await settle();
    expect(page.fake.state.proofs.filed).toHaveLength(1);
    expect(location.hash).toBe(`#/gauges/proofs/${page.fake.state.proofs.filed[0]!.proofId}`);
    expect(screen.getByRole("heading", { level: 1 }).textContent).toContain("Proof of Gauge 1");
    expect(await faults()).toEqual([]);
  });

  it("keeps the step when what was typed is no force, and says so", async () => {
    const page = await openAt(planAt);
    await begin(page);
    for (let i = 0; i < 3; i += 1) await press(" ");
    await typeShown("12 Nm");
    expect(screen.getByText("This is no force with a unit.")).toBeTruthy();
    expect(said()).toBe("Unload: zero before the loads");
  });

  it("repeats a step only with a reason, and the step is then the next one", async () => {
    const page = await openAt(planAt);
    await begin(page);
    for (let i = 0; i < 3; i += 1) await press(" ");
    await typeShown("0.01");
    fireEvent.click(screen.getByRole("button", { name: "Repeat the last step" }));
    const dialog = within(screen.getByRole("dialog"));
    fireEvent.click(dialog.getByRole("button", { name: "Repeat the last step" }));
    expect(dialog.getByText(/Please give a reason/)).toBeTruthy();
    fireEvent.change(dialog.getByLabelText("Reason"), { target: { value: "somebody leaned on it" } });
    fireEvent.click(dialog.getByRole("button", { name: "Repeat the last step" }));
    await settle();
    expect(said()).toBe("Unload: zero before the loads");
    expect(screen.getByText("again: 1")).toBeTruthy();
  });

  it("is put down with a reason, found again from Gauges, and goes on where it stood", async () => {
    const page = await openAt(planAt);
    await begin(page);
    await press(" ");
    await press("p");
    const dialog = within(screen.getByRole("dialog"));
    fireEvent.change(dialog.getByLabelText("Reason"), { target: { value: "lunch" } });
    fireEvent.click(dialog.getByRole("button", { name: "Put it down" }));
    await settle();
    expect(said()).toBe("This proof was put down");
    expect(await faults()).toEqual([]);
    await goTo("#/gauges");
    expect(screen.getByText("A proof of Gauge 1 is in work")).toBeTruthy();
    await goTo("#/gauges/proving");
    await press(" ");
    expect(said()).toBe("Mount the gauge at 0°");
  });

  it("shows figures, steadiness and what is still to wait, and takes with Enter as with the space bar", async () => {
    const page = await openAt(planAt, ({ fake }) => {
      fake.state.proofs.references = [transducer];
    });
    fireEvent.click(screen.getByRole("button", { name: "To the cautions" }));
    await settle();
    for (let i = 0; i < 3; i += 1) await press("Enter");
    expect(said()).toBe("Unload: zero before the loads");
    const watch = (share: number, phase: "waiting" | "ready") =>
      act(async () => {
        const stand = { state: "open" as const, forceN: 12, share, steady: share >= 0.5 };
        page.fake.state.say("proof.watched", {
          proofId: page.fake.state.proofs.draft!.proofId,
          index: 3,
          targetN: 0,
          gauge: stand,
          reference: stand,
          phase,
          waitLeftS: phase === "waiting" ? 12 : 0,
          readLeftS: 0,
          why: phase === "waiting" ? "waiting" : undefined,
          offset: undefined,
        });
      });
    await watch(0.2, "waiting");
    expect(screen.getByText("to stand 12 s more")).toBeTruthy();
    const bar = screen.getByRole("meter", { name: "How still the load stands: gauge" });
    expect([bar.getAttribute("aria-valuenow"), bar.getAttribute("aria-valuetext")]).toEqual(["0.2", "moving"]);
    expect(screen.getByRole("button", { name: /Take the zero/ }).classList).not.toContain("main");
    await watch(0.9, "ready");
    expect(bar.getAttribute("aria-valuetext")).toBe("steady");
    expect(screen.getByRole("button", { name: /Take the zero/ }).classList).toContain("main");
    expect(await faults()).toEqual([]);
    await press("Enter");
    expect(said()).toMatch(/^Load up to/);
  });

  it("tells a screen reader the next act and no figure that changes", async () => {
    const page = await openAt(planAt);
    await begin(page);
    await press(" ");
    const live = [...document.querySelectorAll("main [role=status], main [aria-live]:not([aria-live=off])")];
    expect(live.map((one) => one.textContent?.trim())).toEqual(["Next: Mount the gauge at 0°"]);
  });
});

describe("after a proof", () => {
  beforeAll(standInBrowser);
  afterEach(closePage);

  const withProofs = (page: Page) => {
    const gaugeId = gaugeIdOf(page);
    page.fake.state.proofs.filed = [
      aProof({ seed: 1, gaugeId, on: "2024-03-02", gain: 1.001 }),
      aProof({ seed: 2, gaugeId, on: "2025-03-02", gain: 1.0012 }),
      aProof({ seed: 3, gaugeId, on: "2026-03-02", gain: 1.004 }),
    ];
  };

  it("shows the gauge's proofs, and its drift as points that the arrow keys tell", async () => {
    await openAt((page) => `#/gauges/${gaugeIdOf(page)}`, withProofs);
    expect(screen.getAllByRole("row")).toHaveLength(4);
    const chart = screen.getByRole("img", { name: /^Drift from proof to proof/ });
    fireEvent.keyDown(chart, { key: "End" });
    const figure = chart.closest("figure")!;
    // 1.004 over 1.0012 is 0.28 % more for the same force: a reading means 0.28 % less.
    expect(within(figure).getByRole("status").textContent).toMatch(/2025 to .*2026: −0\.2[78]\d/);
    expect(await faults()).toEqual([]);
  });

  it("shows class, steps, and that the table is from memory; charts have tables", async () => {
    const page = await openAt((p) => {
      withProofs(p);
      return `#/gauges/proofs/${p.fake.state.proofs.filed[2]!.proofId}`;
    });
    expect(screen.getByText(/^Class \S+ from/)).toBeTruthy();
    expect(screen.getByText(/check against your edition of the standard/)).toBeTruthy();
    expect(screen.getByText("This is not an accredited certificate.")).toBeTruthy();
    fireEvent.click(screen.getByRole("button", { name: "As a table: Errors" }));
    const table = within(screen.getByRole("region", { name: "As a table: Errors" }));
    const { result } = page.fake.state.proofs.filed[2]!;
    expect(table.getAllByText("mean")).toHaveLength(result!.steps.length);
    expect(await faults()).toEqual([]);
  });

  it("records an adjustment, after which the next proof is the one as left", async () => {
    const page = await openAt((p) => {
      withProofs(p);
      return `#/gauges/proofs/${p.fake.state.proofs.filed[2]!.proofId}`;
    });
    fireEvent.click(screen.getByRole("button", { name: "Record an adjustment" }));
    const dialog = within(screen.getByRole("dialog"));
    fireEvent.change(dialog.getByLabelText("What was done"), { target: { value: "span set anew" } });
    fireEvent.click(dialog.getByRole("button", { name: "Record an adjustment" }));
    await settle();
    expect(page.fake.state.proofs.adjustments.map(({ what }) => what)).toEqual(["span set anew"]);
    expect(screen.getByText(/span set anew/)).toBeTruthy();
    await goTo(planAt(page));
    expect((screen.getByLabelText("as left, after an adjustment") as HTMLInputElement).checked).toBe(true);
  });

  it("lists the checks in doubt, and marks only what was ticked, with a reason", async () => {
    const page = await openAt((p) => {
      withProofs(p);
      p.fake.state.proofs.affected = inDoubt(p, { proofId: idOf(7_001), on: "2025-03-02" });
      return `#/gauges/proofs/${p.fake.state.proofs.filed[2]!.proofId}/affected`;
    });
    expect(screen.getByText("The verdict of one would change.")).toBeTruthy();
    expect(await faults()).toEqual([]);
    fireEvent.click(screen.getByRole("button", { name: "Tick those whose verdict would change" }));
    fireEvent.click(screen.getByRole("button", { name: "Mark 1 for a new measurement" }));
    const dialog = within(screen.getByRole("dialog"));
    fireEvent.change(dialog.getByLabelText("Reason"), { target: { value: "gauge found off" } });
    fireEvent.click(dialog.getByRole("button", { name: "Mark 1 for a new measurement" }));
    await settle();
    expect(page.fake.state.proofs.marked).toEqual([page.fake.state.checks[0]!.checkId]);
  });

  it("says in German too why a filed proof came to nothing", async () => {
    const { refused, why: refusedWhy } = refuse("tooFewLoads", 3, 4, 2);
    const page = await openAt((p) => {
      p.fake.state.proofs.filed = [{ ...aProof({ seed: 1 }), result: null, curve: null, refused, refusedWhy }];
      return `#/gauges/proofs/${p.fake.state.proofs.filed[0]!.proofId}`;
    });
    await act(async () => {
      await page.core.client.call("settings.save", { language: "de" });
    });
    await settle();
    expect(screen.getByRole("alert").textContent).toContain(
      "Kein Ergebnis: Grad 3 braucht mindestens 4 verschiedene Lasten, die Messwerte haben 2:",
    );
  });

  it("says in German too why an adapter's scale cannot be told", async () => {
    const page = await openAt((p) => `#/gauges/factor/${p.fake.state.adapters[0]!.adapter.adapterId}`);
    for (const row of screen.getAllByRole("listitem", { name: /^Reading/ })) {
      fireEvent.change(within(row).getByLabelText("run"), { target: { value: "1" } });
      for (const label of ["force", "shown without it", "shown with it"])
        fireEvent.change(within(row).getByLabelText(label), { target: { value: "10" } });
    }
    await act(async () => {
      await page.core.client.call("settings.save", { language: "de" });
    });
    fireEvent.click(document.querySelector('button[type="submit"]')!);
    await settle();
    expect(screen.getByRole("alert").textContent).toContain("braucht mindestens zwei Läufe, nicht 1:");
  });

  it("works out an adapter's scale, and asks for figures above zero", async () => {
    const page = await openAt((p) => {
      p.fake.state.proofs.affected = inDoubt(p, { proofId: undefined, on: "2026-01-05" });
      return `#/gauges/factor/${p.fake.state.adapters[0]!.adapter.adapterId}`;
    });
    fireEvent.click(screen.getByRole("button", { name: "Work it out" }));
    await settle();
    expect(screen.getByText("Every figure must be above zero.")).toBeTruthy();
    const rows = screen.getAllByRole("listitem", { name: /^Reading/ });
    for (const [i, row] of rows.entries()) {
      fireEvent.change(within(row).getByLabelText("force"), { target: { value: "10" } });
      fireEvent.change(within(row).getByLabelText("shown without it"), { target: { value: "10" } });
      fireEvent.change(within(row).getByLabelText("shown with it"), { target: { value: String(9.9 + 0.01 * i) } });
    }
    fireEvent.click(screen.getByRole("button", { name: "Work it out" }));
    await settle();
    // Mean of 10/9.90, 10/9.91, 10/9.92.
    expect(screen.getByText(/^Scale 1\.00908 ± /)).toBeTruthy();
    // From 1.004 to 1.00908 with 0.1 % each way: off by half a percent, more than both explain.
    expect(screen.getByText(/^It is off the 1\.00400 it had by \+0\.51 %;/)).toBeTruthy();
    expect(screen.getByText(/^2 checks used its calibration of Jan 5, 2026;/)).toBeTruthy();
    fireEvent.click(screen.getByRole("button", { name: "Tick those whose verdict would change" }));
    fireEvent.click(screen.getByRole("button", { name: "Mark 1 for a new measurement" }));
    const dialog = within(screen.getByRole("dialog"));
    fireEvent.change(dialog.getByLabelText("Reason"), { target: { value: "adapter found off" } });
    fireEvent.click(dialog.getByRole("button", { name: "Mark 1 for a new measurement" }));
    await settle();
    expect(page.fake.state.proofs.marked).toEqual([page.fake.state.checks[0]!.checkId]);
    expect(await faults()).toEqual([]);
  });
});

describe("references", () => {
  beforeAll(standInBrowser);
  afterEach(closePage);

  it("are entered with figures as certificates state them, and refused at the field", async () => {
    await import("../../../../renderer/screens/proof/references/ReferenceForm.tsx");
    const page = await openAt(() => "#/gauges");
    fireEvent.click(screen.getByRole("button", { name: "Add a reference" }));
    await settle();
    const dialog = within(screen.getByRole("dialog"));
    const fill = (label: string, value: string) =>
      fireEvent.change(dialog.getByLabelText(label), { target: { value } });
    expect(await faults()).toEqual([]);
    fill("Name", "Weights 1");
    fill("mass, kg", "0");
    fill("Latitude, °", "91");
    fill("Height, m", "100");
    fireEvent.click(dialog.getByRole("button", { name: "Save" }));
    expect(dialog.getByText("This must be above zero.")).toBeTruthy();
    expect(dialog.getByText("From −90 to 90.")).toBeTruthy();
    fill("mass, kg", "100");
    fill("U of it (k = 2), g", "2");
    fill("Latitude, °", "48.1");
    fireEvent.click(dialog.getByRole("button", { name: "Save" }));
    await settle();
    const saved = page.fake.state.proofs.references.find(({ name }) => name === "Weights 1")!;
    expect(saved.weights!.weights[0]).toMatchObject({ massKg: 100, massStandardKg: 0.001, massKind: "conventional" });
    expect(screen.getByText("dead weights")).toBeTruthy();
  });
});
