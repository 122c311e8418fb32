import { readFileSync } from "node:fs";
import { join } from "node:path";
import { parse } from "csv-parse/sync";
import { describe, expect, it } from "vitest";
import { dsiUnits, newtonsTo } from "../../../../main/report/proof/dsi.ts";
import { proofData } from "../../../../main/report/proof/proofData.ts";
import { idOf } from "../../../support/aCheck.ts";
import { provedStore } from "../../../support/provedStore.ts";

const published = JSON.parse(readFileSync(join(import.meta.dirname, "../../../published/d-si.json"), "utf8")) as {
  readonly namespace: string;
  readonly decimalPattern: string;
  readonly units: readonly string[];
  readonly real: {
    readonly order: readonly string[];
    readonly required: readonly string[];
    readonly uncertainties: Readonly<
      Record<string, { readonly required: readonly string[]; readonly optional: readonly string[] }>
    >;
  };
};
type Json = Readonly<Record<string, unknown>>;

const textOf = (as: "csv" | "json", change?: Parameters<typeof provedStore>[0]) => {
  const { store, left } = provedStore(change);
  return { text: Buffer.from(proofData(store.db, left.proofId, as)!.base64, "base64").toString("utf8"), left };
};

/** Every `si:real` of a document, wherever it stands. */
function realsIn(value: unknown): Json[] {
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([key, one]) => (key === "si:real" ? [one as Json] : realsIn(one)));
}
const bare = (key: string) => key.replace(/^si:/, "");

describe("a proof as JSON with units by D-SI (test/published/d-si.json)", () => {
  const read = () => {
    const { text, left } = textOf("json");
    const document = JSON.parse(text) as Json & { readonly result: { readonly steps: readonly Json[] } };
    return { document, left, reals: realsIn(document) };
  };

  it("names the namespace, and every quantity by published elements alone, in their order", () => {
    const { document, reals } = read();
    expect(document["@context"]).toEqual({ si: published.namespace });
    expect(reals.length).toBeGreaterThan(200);
    for (const real of reals) {
      const keys = Object.keys(real).map(bare);
      expect(keys).toEqual(published.real.order.filter((name) => keys.includes(name)));
      for (const name of published.real.required) expect(keys).toContain(name);
    }
  });

  it("writes every unit by the published identifiers, multiplied by standing side by side", () => {
    const { reals } = read();
    for (const unit of [...reals.map((real) => String(real["si:unit"])), ...Object.values(dsiUnits), newtonsTo(-2)]) {
      expect(unit).toMatch(/^(\\[a-z]+(\{-?\d+\})?)+$/);
      for (const word of unit.match(/\\[a-z]+/g)!) if (word !== "\\tothe") expect(published.units).toContain(word);
    }
  });

  it("writes numbers by the published pattern", () => {
    const { reals } = read();
    const pattern = new RegExp(`^(?:${published.decimalPattern})$`);
    for (const real of reals) expect(String(real["si:value"])).toMatch(pattern);
  });

  it("states each uncertainty with all its published parts, the factor at least 1, the probability a share", () => {
    const { reals } = read();
    const stated = reals.flatMap((real) => Object.entries((real["si:measurementUncertaintyUnivariate"] as Json) ?? {}));
    expect(stated.length).toBeGreaterThan(10);
    for (const [kind, parts] of stated) {
      const known = published.real.uncertainties[bare(kind)]!;
      const keys = Object.keys(parts as Json).map(bare);
      for (const name of known.required) expect(keys).toContain(name);
      for (const name of keys) expect([...known.required, ...known.optional]).toContain(name);
      const { "si:coverageFactor": factor = 1, "si:coverageProbability": probability = 0.5 } = parts as Record<
        string,
        number
      >;
      expect(factor).toBeGreaterThanOrEqual(1);
      expect(probability).toBeGreaterThan(0);
      expect(probability).toBeLessThan(1);
    }
  });

  it("carries each step's error with expanded uncertainty, coverage factor and probability as filed", () => {
    const { document, left } = read();
    expect(document.result.steps).toHaveLength(left.result!.steps.length);
    for (const [i, step] of left.result!.steps.entries()) {
      const [error] = realsIn({ error: document.result.steps[i]!.error });
      expect(error).toMatchObject({
        "si:value": step.errorN,
        "si:unit": "\\newton",
        "si:measurementUncertaintyUnivariate": {
          "si:expandedMU": {
            "si:valueExpandedMU": step.uncertainty.expandedN,
            "si:coverageFactor": step.uncertainty.coverageFactor,
            "si:coverageProbability": 0.95,
          },
        },
      });
    }
  });

  it("writes a coefficient in the unit that makes its term a force", () => {
    expect([0, 1, 2, 3].map((i) => newtonsTo(1 - i))).toEqual([
      "\\newton",
      "\\one",
      "\\newton\\tothe{-1}",
      "\\newton\\tothe{-2}",
    ]);
  });
});

describe("a proof as CSV (RFC 4180)", () => {
  it("is read back by a general-purpose parser: readings and results, numbers as filed", () => {
    const { text, left } = textOf("csv");
    const rows = parse(text, { columns: true }) as Record<string, string>[];
    const readings = rows.filter((row) => row.kind === "reading");
    expect(readings.map((row) => Number(row.indication_N))).toEqual(left.takings.map((t) => t.indicationN));
    const results = rows.filter((row) => row.kind === "result");
    expect(results.map((row) => Number(row.expanded_N))).toEqual(
      left.result!.steps.map((s) => s.uncertainty.expandedN),
    );
    expect(text.endsWith("\r\n")).toBe(true);
    expect(text.split("\r\n")).toHaveLength(rows.length + 2);
  });

  it("lets no reason act as a formula, and keeps quotes and line ends whole", () => {
    const reason = '=1+1; "knocked",\nagain';
    const { text } = textOf("csv", (proof) => ({
      ...proof,
      takings: proof.takings.map((t, i) => (i === 0 ? { ...t, replaced: { at: t.at, reason } } : t)),
    }));
    const [first] = parse(text, { columns: true }) as Record<string, string>[];
    expect(first!.replaced_because).toBe(`'${reason}`);
  });

  it("is of a proof that is there", () => {
    expect(proofData(provedStore().store.db, idOf(77_777), "csv")).toBeUndefined();
  });
});
