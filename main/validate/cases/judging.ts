import { combine } from "../../../app/correction/combine.ts";
import { fromNewtons, newtonsPerUnit, toNewtons } from "../../../app/quantity/forceUnits.ts";
import { parseForceUnit } from "../../../app/quantity/parseForceUnit.ts";
import type { DecisionRule } from "../../../app/verdict/Judgement.ts";
import { judge } from "../../../app/verdict/judge.ts";
import { oddsAt, oddsBetween } from "../../../app/verdict/odds.ts";
import { type Published, type Runner, sourceLine, type Trial } from "../Trial.ts";

/** Units, uncertainty and verdicts. */

export const units: Runner = ({ source, cases, newton_per_unit_exact: exact }) => {
  const unitNamed = (text: string) => {
    const meaning = parseForceUnit(text);
    return meaning.kind === "force" ? meaning.unit : undefined;
  };
  const factors = Object.entries(exact as Record<string, string>).map(([name, value]): Trial => {
    const unit = unitNamed(name);
    return {
      name: `newtons in one ${name}`,
      source: sourceLine(source),
      expected: Number(value),
      got: unit && newtonsPerUnit[unit],
      within: { relative: 1e-14 },
    };
  });
  const converted = cases.map(({ value, from, to, result }: Published): Trial => {
    const [a, b] = [unitNamed(from), unitNamed(to)];
    const got = a && b && fromNewtons(toNewtons(value, a), b);
    return {
      name: `${value} ${from} in ${to}`,
      source: sourceLine(source),
      expected: result,
      got,
      within: { relative: 1e-14 },
    };
  });
  return [...factors, ...converted];
};

/** JCGM 100:2008, annex H.1: the budget of an end gauge. */
export const gum: Runner = ({ cases }) => {
  const c = cases.find((one: Published) => one.name.startsWith("H.1"));
  const parts = Object.values(c.inputs.components as Record<string, { u: number; nu: number }>);
  const budget = combine(
    parts.map(({ u, nu }) => ({
      source: "gaugeProof",
      type: "B",
      distribution: "t",
      standardN: u,
      degreesOfFreedom: nu,
      assumed: false,
    })),
    0.99,
  );
  const want = c.expected.recomputed;
  const trial = (name: string, expected: number, got: number): Trial => ({
    name: `${c.name}, ${name}`,
    source: sourceLine(c.source),
    expected,
    got,
    within: { relative: 1e-8 },
  });
  return [
    trial("combined standard uncertainty", want.u_c, budget.standardN),
    trial("effective degrees of freedom", want.nu_effective, budget.degreesOfFreedom),
    trial("coverage factor for 99 %", want.k_99, budget.coverageFactor),
  ];
};

export const conformity: Runner = ({ cases }) =>
  cases
    .filter(
      (c: Published) =>
        c.expected?.recomputed?.p_conform !== undefined && c.inputs?.y !== undefined && c.inputs?.u !== undefined,
    )
    .map((c: Published): Trial => {
      const { y, u, lower_limit: low, upper_limit: high } = c.inputs;
      const measured = { valueN: y, standardUncertaintyN: u };
      const atLow = low === undefined ? undefined : oddsAt(measured, y - low);
      const atHigh = high === undefined ? undefined : oddsAt(measured, high - y);
      const odds = atLow && atHigh ? oddsBetween(atLow, atHigh) : (atLow ?? atHigh);
      return {
        name: `${c.name}, probability of conforming`,
        source: sourceLine(c.source),
        expected: c.expected.recomputed.p_conform,
        got: odds?.conforming,
        within: { relative: 1e-9 },
      };
    });

/** A lower limit of 18.0 with U = 0.3. */
export const decisionRules: Runner = ({ source, boundary_cases: { rows } }) =>
  rows.flatMap((row: Published): Trial[] => {
    const judged = (rule: DecisionRule) =>
      judge({ valueN: row.measured, standardUncertaintyN: 0.15, limits: { minimumN: 18 }, rule });
    const asWords = (accepted: string) => (accepted === "pass" ? "conforming" : "nonConforming");
    const zone = row.guarded_non_binary.replace(/ (.)/, (_: string, letter: string) => letter.toUpperCase());
    const of = `${row.measured} against 18.0, U = 0.3`;
    return [
      {
        name: `${of}, simple acceptance`,
        source: sourceLine(source),
        expected: asWords(row.simple_acceptance),
        got: judged({ rule: "simple" }).conformity,
      },
      {
        name: `${of}, guarded`,
        source: sourceLine(source),
        expected: asWords(row.guarded_binary),
        got: judged({ rule: "guarded" }).conformity,
      },
      { name: `${of}, zone`, source: sourceLine(source), expected: zone, got: judged({ rule: "ilacG8" }).zone },
      {
        name: `${of}, probability`,
        source: sourceLine(source),
        expected: row.p_conform,
        got: judged({ rule: "ilacG8" }).probabilityConforming,
        within: { absolute: 1e-9 },
      },
    ];
  });
