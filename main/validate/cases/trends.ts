import { cusumChart } from "../../../app/trend/control/cusumChart.ts";
import { ewmaChart } from "../../../app/trend/control/ewmaChart.ts";
import { individualsChart } from "../../../app/trend/control/individualsChart.ts";
import { mannKendall } from "../../../app/trend/mannKendall.ts";
import { pettitt } from "../../../app/trend/step/pettitt.ts";
import { theilSen } from "../../../app/trend/theilSen.ts";
import { toleranceFactor } from "../../../app/trend/toleranceFactor.ts";
import { type Published, type Runner, sourceLine, type Trial } from "../Trial.ts";

/** Trends, steps and control charts. */

export const trends: Runner = ({ cases }) =>
  cases.flatMap((c: Published): Trial[] => {
    const x: number[] = c.inputs.times ?? c.inputs.values.map((_: number, i: number) => i);
    const want = c.expected.recomputed;
    const trial = (name: string, expected: number, got: number | undefined, relative = 1e-9): Trial => ({
      name: `${c.name}, ${name}`,
      source: sourceLine(c.source),
      expected,
      got,
      within: { relative },
    });
    const found: Trial[] = [];
    if ("S" in want) {
      const got = mannKendall(x, c.inputs.values);
      found.push(
        trial("S", want.S, got.s),
        trial("variance of S", want.VarS, got.varS),
        trial("z", want.z, got.z),
        trial("tau b", want.tau_b, got.tauB),
      );
    }
    if ("slope" in want) {
      const got = theilSen(x, c.inputs.values);
      found.push(
        trial("slope", want.slope, got?.slope),
        trial("its lower end", want.lower_interpolated, got?.low),
        trial("its upper end", want.upper_interpolated, got?.high),
      );
    }
    return found;
  });

export const steps: Runner = ({ cases: [forty] }) => {
  const got = pettitt(forty.inputs.values);
  const want = forty.expected.recomputed;
  const source = sourceLine(forty.source);
  return [
    { name: `${forty.name}, K`, source, expected: want.K, got: got.k },
    { name: `${forty.name}, place`, source, expected: want.position, got: got.index },
    { name: `${forty.name}, p`, source, expected: want.p_approximate, got: got.p, within: { absolute: 1e-12 } },
  ];
};

export const ewma: Runner = ({ source, inputs, expected }) => {
  const { values, start, sd, lambda, k } = inputs;
  const got = ewmaChart(values, { lambda, target: start, sigma: sd, width: k, limits: "steady" });
  const own = sourceLine(source);
  return [
    ...expected.recomputed.ewma.map(
      (want: number, i: number): Trial => ({
        name: `EWMA of point ${i + 1}`,
        source: own,
        expected: want,
        got: got.values[i],
        within: { absolute: 1e-9 },
      }),
    ),
    {
      name: "upper limit as printed",
      source: own,
      expected: expected.published.ucl,
      got: got.upper.at(-1),
      within: { absolute: 1e-4 },
    },
    {
      name: "signals",
      source: own,
      expected: JSON.stringify(expected.published.signals),
      got: JSON.stringify(got.signals),
    },
  ];
};

export const cusum: Runner = ({ source, inputs, expected }) => {
  const { group_means: values, target, sd_of_means: sigma, k, h } = inputs;
  const got = cusumChart(values, { k: k / sigma, h: h / sigma, target, sigma });
  const own = sourceLine(source);
  return [
    ...expected.recomputed.upper_sum.map(
      (want: number, i: number): Trial => ({
        name: `upper sum of point ${i + 1}`,
        source: own,
        expected: want,
        got: got.high[i]! * sigma,
        within: { absolute: 1e-9 },
      }),
    ),
    {
      name: "signals as printed",
      source: own,
      expected: JSON.stringify(expected.published.signals),
      got: JSON.stringify(got.signals),
    },
  ];
};

export const individuals: Runner = ({ source, inputs, expected: { published, recomputed } }) => {
  const got = individualsChart(inputs.values);
  const own = sourceLine(source);
  return [
    {
      name: "upper limit as printed",
      source: own,
      expected: published.ucl,
      got: got.upper,
      within: { absolute: 5e-5 },
    },
    {
      name: "lower limit as printed",
      source: own,
      expected: published.lcl,
      got: got.lower,
      within: { absolute: 5e-5 },
    },
    {
      name: "standard deviation from moving ranges",
      source: own,
      expected: recomputed.sd_estimate,
      got: got.sigma,
      within: { relative: 1e-9 },
    },
  ];
};

export const tolerance: Runner = ({ cases: [handbook] }) => {
  const got = toleranceFactor(43, 0.9, 0.99, "two");
  const source = sourceLine(handbook.source);
  return [
    {
      name: "two-sided factor, 43 values, 90 % with 99 %, as printed",
      source,
      expected: handbook.expected.published.k2,
      got,
      within: { absolute: 5e-8 },
    },
    {
      name: "one-sided factor, exact",
      source,
      expected: handbook.expected.recomputed.k1_exact_noncentral_t,
      got: toleranceFactor(43, 0.9, 0.99, "one"),
      within: { relative: 1e-7 },
    },
  ];
};
