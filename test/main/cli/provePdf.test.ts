import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { iso376Example } from "../../support/iso376Example.ts";
import { pdfText } from "../../support/pdfText.ts";
import { csvOf, runProve } from "../../support/runProve.ts";
import { tempFolder } from "../../support/storeInTemp.ts";

const flat = (text: string) => text.replace(/\s+/g, " ");
/** The published worked example with its indications taken for kilonewtons (they stand in a gauge's own unit there). */
const inForce = csvOf(iso376Example()).replace("indication,", "indication_kN,");

describe("holdfast prove --pdf", () => {
  it.for(["en", "de"] as const)(
    "writes tables, charts and class beside the figures on the screen, in %s",
    async (language, context) => {
      const out = join(tempFolder(), "proof.pdf");
      const ran = await runProve(
        inForce,
        "-",
        "--method",
        "iso376",
        "--resolution",
        "0.0001 kN",
        "--pdf",
        out,
        "--language",
        language,
        "--json",
      );
      expect(ran).toMatchObject({ code: 0, err: "" });
      const text = flat(pdfText(context, readFileSync(out), language));
      const { steps, class: name } = ran.json();
      const written = (figure: number) => (language === "de" ? figure.toFixed(3).replace(".", ",") : figure.toFixed(3));
      for (const step of steps) expect(text).toContain(written(Math.abs(step.b)));
      expect(text).toContain(language === "en" ? `Class ${name} from` : `Klasse ${String(name).replace(".", ",")} von`);
      expect(text).toContain(language === "en" ? "Not an accredited certificate." : "Kein akkreditiertes Zertifikat.");
      expect(text).toMatch(/[0-9a-f]{64}/); // which file it was
    },
  );

  it("states conformity by the rule that was asked for", async (context) => {
    const out = join(tempFolder(), "proof.pdf");
    const rows = [
      "reference_kN,indication_N,run",
      ...[1, 2, 3].flatMap((run) => [10, 20, 30].map((kN) => `${kN},${kN * 1001 + run},${run}`)),
    ];
    const ran = await runProve(
      rows.join("\n"),
      "-",
      "--method",
      "working",
      "--mpe",
      "0.2 kN",
      "--rule",
      "simple",
      "--pdf",
      out,
    );
    expect(ran.code).toBe(0);
    const text = flat(pdfText(context, readFileSync(out)));
    expect(text).toContain("permissible error 0.2 kN");
    expect(text).toContain("decision rule simple");
    expect(text).toContain("all steps together conforming");
  });

  it.each([
    [csvOf(iso376Example()), "both columns in units of force"],
    [inForce, "A4 or Letter", "--paper", "A5"],
  ])("ends with 2 and one line where it cannot be made", async (csv, said, ...more) => {
    const ran = await runProve(csv, "-", "--method", "iso376", "--pdf", join(tempFolder(), "proof.pdf"), ...more);
    expect(ran.code).toBe(2);
    expect(ran.err).toContain(said);
    expect(ran.out).toBe("");
  });
});
