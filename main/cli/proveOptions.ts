import { readFile } from "node:fs/promises";
import type { ProofOptions } from "../../app/proof/method/ProofOptions.ts";
import type { ProofTerms } from "../../app/proof/result/proveReadings.ts";
import { readAstmE74Table } from "../../app/proof/tables/astmE74Table.ts";
import { readIso376Table } from "../../app/proof/tables/iso376Table.ts";
import type { PermissibleError } from "../../app/proof/working/PermissibleError.ts";
import { parseDecimal } from "../../app/quantity/parseForce.ts";
import type { DecisionRule, RuleName } from "../../app/verdict/Judgement.ts";
import { UsageError } from "./Command.ts";
import { parseShare } from "./parseShare.ts";
import type { ProofFile } from "./readProofCsv.ts";

export const methods = ["polynomial", "iso376", "astm-e74", "working"] as const;
export type Method = (typeof methods)[number];

/** How `prove` was called, texts as typed. */
export type ProveTexts = {
  readonly method?: string | undefined;
  readonly degree?: string | undefined;
  readonly mpe?: string | undefined;
  readonly rule?: string | undefined;
  readonly table?: string | undefined;
  readonly resolution?: string | undefined;
  readonly "reference-uncertainty"?: string | undefined;
  readonly "temperature-coefficient"?: string | undefined;
  readonly "temperature-range"?: string | undefined;
};

/** @throws UsageError  no method or an unknown one, or an option that belongs to another method */
export function methodOf(texts: ProveTexts): Method {
  const method = methods.find((m) => m === texts.method);
  if (method === undefined)
    throw new UsageError(
      `--method is one of ${methods.join(", ")}${texts.method === undefined ? "" : `, got ${texts.method}`}`,
    );
  const only = (option: "mpe" | "rule" | "table" | "degree", allowed: readonly Method[]) => {
    if (texts[option] !== undefined && !allowed.includes(method))
      throw new UsageError(`--${option} belongs to the method ${allowed.join(" or ")}, not to ${method}`);
  };
  only("mpe", ["working"]);
  only("rule", ["working"]);
  only("table", ["iso376", "astm-e74"]);
  if (texts.rule !== undefined && texts.mpe === undefined)
    throw new UsageError("--rule needs --mpe, the permissible error it decides about");
  return method;
}

/** @throws UsageError  an option that cannot be read */
export function proofOptionsOf(texts: ProveTexts, file: ProofFile): ProofOptions {
  const resolution =
    texts.resolution === undefined ? undefined : parseShare("resolution", texts.resolution, file.indicationUnit, true);
  if (resolution?.kind === "percent")
    throw new UsageError(
      `--resolution ${texts.resolution}: is one step of the last digit, such as 0.01 kN, not a percentage`,
    );
  return {
    degree: texts.degree === undefined ? undefined : wholeDegree(texts.degree),
    resolution: resolution?.value,
    referenceRelative: referenceRelative(texts["reference-uncertainty"]),
    temperature: temperature(texts),
  };
}

function wholeDegree(text: string): number {
  const degree = /^\d{1,2}$/.test(text.trim()) ? Number(text) : undefined;
  if (degree === undefined || degree < 1) throw new UsageError(`--degree ${text}: is a whole number from 1 to 12`);
  return degree;
}

/** Certificates state the expanded uncertainty for k = 2. */
function referenceRelative(text: string | undefined): number | undefined {
  if (text === undefined) return undefined;
  const share = parseShare("reference-uncertainty", text, undefined, false);
  if (share.kind !== "percent" || share.ofGreatest)
    throw new UsageError(
      `--reference-uncertainty ${text}: is a percentage of the force, expanded with k = 2, such as "0.02 %"`,
    );
  return share.fraction / 2;
}

function temperature(texts: ProveTexts): ProofOptions["temperature"] {
  const [coefficient, range] = [texts["temperature-coefficient"], texts["temperature-range"]];
  if (coefficient === undefined && range === undefined) return undefined;
  const share =
    coefficient === undefined ? undefined : parseShare("temperature-coefficient", coefficient, undefined, false);
  const rangeK = range === undefined ? undefined : parseDecimal(range.replace(/\s*(K|°C)$/, ""));
  if (share?.kind !== "percent" || share.ofGreatest || rangeK === undefined || !(rangeK >= 0)) {
    throw new UsageError(
      '--temperature-coefficient "0.01 %" (a kelvin) and --temperature-range 2 (kelvins) stand together',
    );
  }
  return { perKelvin: share.fraction, rangeK };
}

const rules = ["simple", "guarded", "iso14253", "ilacG8", "probability"] as const satisfies readonly RuleName[];

/** @throws UsageError  a permissible error or a rule that cannot be read */
export function decisionOf(
  texts: ProveTexts,
  file: ProofFile,
): { readonly mpe: PermissibleError | undefined; readonly rule: DecisionRule } {
  const rule = rules.find((r) => r === (texts.rule ?? "guarded"));
  if (rule === undefined) throw new UsageError(`--rule is one of ${rules.join(", ")}, got ${texts.rule}`);
  if (texts.mpe === undefined) return { mpe: undefined, rule: { rule } };
  const share = parseShare("mpe", texts.mpe, file.referenceUnit, false);
  const mpe: PermissibleError =
    share.kind === "percent"
      ? { kind: share.ofGreatest ? "ofGreatest" : "relative", fraction: share.fraction }
      : { kind: "absolute", force: share.value };
  return { mpe, rule: { rule } };
}

/**
 * A table a laboratory has corrected, read by `read`; undefined when none was named.
 * @throws UsageError  the file cannot be read, is no JSON, or holds no such table
 */
export async function tableOf<T>(file: string | undefined, read: (value: unknown) => T): Promise<T | undefined> {
  if (file === undefined) return undefined;
  const text = await readFile(file, "utf8").catch((cause: NodeJS.ErrnoException) => {
    throw new UsageError(`--table ${file}: cannot be read (${cause.code ?? "unknown fault"}); check the name`);
  });
  try {
    return read(JSON.parse(text));
  } catch (cause) {
    throw new UsageError(`--table ${file}: ${cause instanceof RangeError ? cause.message : "is not JSON"}`);
  }
}

/** The tables a method may be told to use, for all of them as one. */
export async function tablesOf(method: Method, { table }: ProveTexts): Promise<ProofTerms["tables"]> {
  if (method === "iso376") return { iso376: await tableOf(table, readIso376Table) };
  return method === "astm-e74" ? { astmE74: await tableOf(table, readAstmE74Table) } : undefined;
}
