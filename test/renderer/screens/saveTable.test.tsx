import { act, fireEvent, screen } from "@testing-library/react";
import { parse } from "csv-parse/sync";
import { afterEach, beforeAll, beforeEach, describe, expect, it, vi } from "vitest";
import { csvLine } from "../../../app/words/csvCell.ts";
import { readList } from "../../../main/import/readList.ts";
import { readTable } from "../../../main/import/readTable.ts";
import { adapterRows } from "../../../renderer/screens/gauges/adapterRows.ts";
import { createSpeech } from "../../../renderer/words/Speech.ts";
import { closePage, openPage, settle, standInBrowser } from "../../support/page.tsx";

let saved: { name: string; blob: Blob }[] = [];

/** Presses a button that saves, and reads what the browser was handed with a parser that is not ours (RFC 4180). */
async function savedBy(name: RegExp): Promise<{ file: string; rows: Record<string, string>[] }> {
  await act(async () => {
    fireEvent.click(screen.getByRole("button", { name }));
  });
  const { name: file, blob } = saved.at(-1)!;
  const bytes = Buffer.from(await blob.arrayBuffer());
  expect([...bytes.subarray(0, 3)]).toEqual([0xef, 0xbb, 0xbf]);
  return { file, rows: parse(bytes, { bom: true, columns: true }) };
}

describe("a table saved from the screen", () => {
  beforeAll(standInBrowser);
  beforeEach(() => {
    saved = [];
    const blobs = new Map<string, Blob>();
    vi.spyOn(URL, "createObjectURL").mockImplementation((blob) => {
      const address = `blob:${blobs.size}`;
      blobs.set(address, blob as Blob); // what the page makes of its text
      return address;
    });
    vi.spyOn(URL, "revokeObjectURL").mockImplementation(() => {});
    vi.spyOn(HTMLAnchorElement.prototype, "click").mockImplementation(function (this: HTMLAnchorElement) {
      saved.push({ name: this.download, blob: blobs.get(this.href)! });
    });
  });
  afterEach(async () => {
    vi.restoreAllMocks();
    await closePage();
  });

  it("holds the spindles that are shown, as they are ranked, figures as numbers", async () => {
    const { fake } = await openPage("#/spindles");
    const { file, rows } = await savedBy(/Save as CSV: Spindles/);
    expect(file).toBe("spindles.csv");
    expect(rows).toHaveLength(fake.state.spindles.length);
    expect(rows[0]).toMatchObject({ spindle: "Grinder 5", verdict: "act", unit: "kN" });
    const { last, spindle } = fake.state.spindles.find((row) => row.spindle.name === "Grinder 5")!;
    expect(Number(rows[0]!["last force"]) * 1000).toBeCloseTo(last!.valueN!, 1);
    expect(Number(rows[0]!.minimum) * 1000).toBeCloseTo(spindle.limits.minimumN ?? 0, 1);
    const { due } = await fake.handlers["spindles.fleet"]({});
    expect(rows[0]!.due).toBe(due.find((one) => one.spindleId === spindle.spindleId)?.dueOn);
    fireEvent.change(screen.getByRole("textbox", { name: /Search/ }), { target: { value: "lathe" } });
    expect((await savedBy(/Save as CSV/)).rows.map((row) => row.spindle)).toEqual(["Lathe 4"]);
  });

  it("holds the gauges with capacity and due date", async () => {
    const { fake } = await openPage("#/gauges");
    const { rows } = await savedBy(/Save as CSV: Gauges/);
    expect(rows.map((row) => [row.name, Number(row["capacity, N"])])).toEqual(
      fake.state.gauges.map(({ gauge }) => [gauge.name, gauge.capacityN]),
    );
  });

  it("holds the adapters so that they could be imported again, in each language", async () => {
    const page = await openPage("#/gauges");
    const { adapters } = page.fake.state;
    expect(adapters.length).toBeGreaterThan(0);
    const { rows } = await savedBy(/Save as CSV: Adapters/);
    expect(rows.map((row) => [row.name, Number(row.scale), Number(row["standard uncertainty"])])).toEqual(
      adapters.map(({ adapter }) => [adapter.name, adapter.scale, adapter.scaleUncertainty]),
    );
    for (const language of ["en", "de"] as const) {
      const table = adapterRows(adapters, createSpeech(language, language)).map(csvLine).join("");
      const nothing = { names: new Set<string>(), serials: new Set<string>() };
      const file = { what: "adapters" as const, fileName: "adapters.csv", base64: "" };
      const { preview, bodies } = readList(
        file,
        readTable(Buffer.from(table)),
        nothing,
        () => adapters[0]!.adapter.adapterId,
      );
      expect(preview.problems.filter((p) => p.weight === "stops")).toEqual([]);
      expect(
        bodies.map(({ name, taper, serial, scale, scaleUncertainty, dueOn }) => [
          name,
          taper,
          serial,
          scale,
          scaleUncertainty,
          dueOn,
        ]),
      ).toEqual(adapters.map(({ adapter: a }) => [a.name, a.taper, a.serial, a.scale, a.scaleUncertainty, a.dueOn]));
    }
  });

  it("holds the references with what they are traceable by", async () => {
    const page = await openPage("#/gauges");
    page.fake.state.proofs.references = [
      {
        referenceId: page.fake.state.gauges[0]!.gauge.gaugeId,
        name: "Ring 5",
        serial: "R-5",
        kind: "typed",
        typed: { relative: 1e-4, standardN: 0, capacityN: 50_000, dueOn: "2020-01-31" },
        certificate: "K-17; of 31 Jan 2019",
        state: "inUse",
      },
    ];
    page.fake.state.say("proofs.changed", { what: "references", gaugeId: undefined });
    await settle();
    const { file, rows } = await savedBy(/Save as CSV: References/);
    expect(file).toBe("references.csv");
    expect(rows).toEqual([
      {
        name: "Ring 5",
        "Serial number": "R-5",
        kind: "typed values",
        "up to, N": "50000",
        class: "",
        due: "2020-01-31",
        Certificate: "K-17; of 31 Jan 2019",
        state: "past due",
      },
    ]);
  });

  it("holds a check's clampings, each figure unrounded", async () => {
    const { fake } = await openPage("#/spindles");
    const { checkId, spindleId } = fake.state.checks.at(-1)!;
    const { check } = await fake.handlers["checks.get"]({ checkId });
    await act(async () => {
      location.hash = `#/spindles/${spindleId}/checks/${checkId}`;
      dispatchEvent(new HashChangeEvent("hashchange"));
    });
    await settle();
    const { rows } = await savedBy(/Save as CSV: Clampings/);
    expect(rows).toHaveLength(check.cycles.length);
    expect(check.cycles.length).toBeGreaterThan(0);
    for (const [i, cycle] of check.cycles.entries()) {
      expect(Number(rows[i]!["peak, kN"]) * 1000).toBeCloseTo(cycle.peakN, 3);
      expect(rows[i]!["no."]).toBe(String(i + 1));
    }
  });
});
