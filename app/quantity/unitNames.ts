import type { ForceUnit } from "./forceUnits.ts";

/** Names of force units in lower case, without blanks, stops, dashes and brackets. */
export const forceNames: ReadonlyMap<string, ForceUnit> = table({
  N: "n newton newtons",
  mN: "millinewton millinewtons",
  daN: "dan decanewton decanewtons dekanewton",
  kN: "kn kilonewton kilonewtons",
  MN: "meganewton meganewtons",
  dyn: "dyn dyne dynes",
  gf: "gf gramforce",
  kgf: "kgf kp kilopond kiloponds kilogramforce kilogramsforce",
  tf: "tf tfmetric tonneforce tonforcemetric metrictonforce",
  ozf: "ozf ounceforce",
  lbf: "lbf lbsf poundforce poundsforce",
  kip: "kip kips klbf",
  pdl: "pdl poundal poundals",
  tonfShort: "tonfshort tonforceshort tonforceshort2000lbf tonforce2000lbf shorttonforce",
  tonfLong: "tonflong tonforcelong tonforcelong2240lbf tonforce2240lbf longtonforce",
});

/** Names of masses, with the force people mean by them. A bare "ton" is left out: there are three. */
export const massNames: ReadonlyMap<string, ForceUnit> = table({
  gf: "g gram grams gramme grammes",
  kgf: "kg kgs kilo kilos kilogram kilograms",
  tf: "t tonne tonnes",
  ozf: "oz ounce ounces",
  lbf: "lb lbs pound pounds",
  kip: "klb klbs",
});

function table(names: Partial<Record<ForceUnit, string>>): ReadonlyMap<string, ForceUnit> {
  // Object.entries widens the keys; the parameter's type has vouched for them.
  const entries = Object.entries(names) as [ForceUnit, string][];
  return new Map(entries.flatMap(([unit, list]) => list.split(" ").map((name) => [name, unit] as const)));
}
