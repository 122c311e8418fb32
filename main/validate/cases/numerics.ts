import { autocorrelation } from "../../../app/numerics/autocorrelation.ts";
import { chiSquareCdf } from "../../../app/numerics/chiSquareCdf.ts";
import { erf } from "../../../app/numerics/erf.ts";
import { fCdf } from "../../../app/numerics/fCdf.ts";
import { fitPolynomial } from "../../../app/numerics/fitPolynomial.ts";
import { generalizedEsd } from "../../../app/numerics/generalizedEsd.ts";
import { incompleteBeta } from "../../../app/numerics/incompleteBeta.ts";
import { inversePrediction } from "../../../app/numerics/inversePrediction.ts";
import { lackOfFit } from "../../../app/numerics/lackOfFit.ts";
import { mean } from "../../../app/numerics/mean.ts";
import { normalCdf } from "../../../app/numerics/normalCdf.ts";
import { normalQuantile } from "../../../app/numerics/normalQuantile.ts";
import { runsTest } from "../../../app/numerics/runsTest.ts";
import { sampleStdDev } from "../../../app/numerics/sampleStdDev.ts";
import { studentCdf } from "../../../app/numerics/studentCdf.ts";
import { studentQuantile } from "../../../app/numerics/studentQuantile.ts";
import { type Published, type Runner, sourceLine, type Trial } from "../Trial.ts";

/** Statistics, fits and probabilities. Bounds are those of the tests beside the program's sources. */

export const univariate: Runner = ({ source, datasets }) =>
  Object.entries(datasets as Record<string, Published>).flatMap(([name, set]): Trial[] => {
    const data: number[] = set.data ?? [
      set.data_rule.first,
      ...Array.from({ length: 500 }, () => set.data_rule.then_repeat_500_times).flat(),
    ];
    const inexact = name === "NumAcc3" || name === "NumAcc4"; // decimals about a million cannot be held exactly
    return [
      {
        name: `${name}, mean`,
        source: sourceLine(source),
        expected: set.mean,
        got: mean(data),
        within: { relative: 1e-14 },
      },
      {
        name: `${name}, standard deviation`,
        source: sourceLine(source),
        expected: set.sd_n_minus_1,
        got: sampleStdDev(data),
        within: { relative: inexact ? 1e-6 : 1e-12 },
      },
      {
        name: `${name}, lag-1 autocorrelation`,
        source: sourceLine(source),
        expected: set.lag1_autocorrelation,
        got: autocorrelation(data, 1)[0],
        within: { absolute: inexact ? 1e-6 : 1e-10 },
      },
    ];
  });

/** @param degree  of the file's model @param relative  agreement asked for */
export const fitTo =
  (degree: number, relative: number): Runner =>
  ({ source, inputs, expected }) => {
    const fit = fitPolynomial(inputs.x, inputs.y, degree);
    const trial = (name: string, want: number, got: number): Trial => ({
      name,
      source: sourceLine(source),
      expected: want,
      got,
      within: want === 0 ? { absolute: 1e-12 } : { relative },
    });
    return [
      ...fit.coefficients.map((b, i) => trial(`coefficient of x^${i}`, expected.coefficients[i], b)),
      ...fit.coefficientSd.map((s, i) =>
        trial(`standard deviation of the coefficient of x^${i}`, expected.coefficient_sd[i], s),
      ),
      trial("residual standard deviation", expected.residual_sd, fit.residualSd),
      trial("R squared", expected.r_squared, fit.rSquared),
    ];
  };

export const probability: Runner = (data) => {
  const functions: Record<string, (...args: never[]) => number> = {
    normalCdf: normalCdf,
    erf: erf,
    normalQuantile: normalQuantile,
    studentCdf: studentCdf,
    studentQuantile: studentQuantile,
    incompleteBeta: incompleteBeta,
    fCdf: fCdf,
    chiSquareCdf: chiSquareCdf,
  };
  return Object.entries(functions).map(([name, f]): Trial => {
    const rows = data[name] as readonly (readonly never[])[];
    const worst = Math.max(
      ...rows.map((row) => {
        const truth = row.at(-1)! as number;
        const value = f(...row.slice(0, -1));
        return value === truth ? 0 : Math.abs(value / truth - 1);
      }),
    );
    return {
      name: `${name}, greatest relative error over ${rows.length} values`,
      source: sourceLine(data.source),
      expected: 0,
      got: worst,
      within: { absolute: 1e-12 },
    };
  });
};

export const inverse: Runner = ({ cases }) =>
  cases.flatMap((c: Published): Trial[] => {
    const { x, y } = "x" in c.inputs ? c.inputs : cases.find((d: Published) => d.name === c.inputs.same_data_as).inputs;
    const options = { level: c.inputs.level, meanResponse: c.inputs.mean_response ?? false, from: -1000, to: 1000 };
    const got = inversePrediction(fitPolynomial(x, y, 1), c.inputs.y0, options);
    return (["estimate", "lower", "upper"] as const).map((key) => ({
      name: `${c.name}, ${key}`,
      source: sourceLine(c.source),
      expected: c.expected.recomputed[key],
      got: got?.[key],
      within: { relative: 1e-9 },
    }));
  });

export const outliers: Runner = ({ cases }) =>
  cases
    .filter((c: Published) => c.name === "gesd-54")
    .flatMap((c: Published): Trial[] =>
      generalizedEsd(c.inputs.values, 10).steps.flatMap((step, i) => [
        {
          name: `${c.name}, statistic ${i + 1}`,
          source: sourceLine(c.source),
          expected: c.expected.recomputed.R[i],
          got: step.statistic,
          within: { absolute: 1e-8 },
        },
        {
          name: `${c.name}, critical value ${i + 1}`,
          source: sourceLine(c.source),
          expected: c.expected.recomputed.critical[i],
          got: step.critical,
          within: { absolute: 1e-8 },
        },
      ]),
    );

/** The handbook's case study is of the load cell of another file. */
export const loadCell =
  (pontius: Published): Runner =>
  ({ source, expected }) => {
    const { x, y } = pontius.inputs;
    return [1, 2].map((degree): Trial => {
      const want = degree === 1 ? expected.line : expected.quadratic;
      return {
        name: `lack of fit of degree ${degree}, F`,
        source: sourceLine(source),
        expected: want.recomputed.lack_of_fit_F,
        got: lackOfFit(fitPolynomial(x, y, degree), x)?.f,
        within: { relative: 1e-8 },
      };
    });
  };

export const runs =
  (strd: Published): Runner =>
  ({ source, expected }) => {
    const got = runsTest(strd.datasets.Lew.data);
    return [
      { name: "Lew data, runs", source: sourceLine(source), expected: expected.recomputed.runs, got: got?.runs },
      {
        name: "Lew data, Z",
        source: sourceLine(source),
        expected: expected.recomputed.Z,
        got: got?.z,
        within: { absolute: 1e-12 },
      },
    ];
  };
