import type { ForceUnit } from "../../app/quantity/forceUnits.ts";

/** The units forces are stated in on a shop floor, the common ones first. */
export const shownUnits: readonly ForceUnit[] = ["kN", "daN", "N", "lbf", "kip", "kgf"];
