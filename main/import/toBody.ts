import type { z } from "zod";
import type { ListKind } from "../../app/contract/importViews.ts";
import { adapterTaken, gauge, spindle } from "../../app/ledger/register.ts";

/** A row's cells as read, by field; forces in newtons. */
export type RowValues = Readonly<Record<string, string | number | undefined>>;

/** Standard uncertainty of an adapter's scale that nobody has stated, as the form of an adapter proposes it (common practice, no source). */
const ASSUMED_SCALE = 0.005;

type Body = Record<string, unknown>;

/** The record a row describes, and the schema that has the last word on it. Absent cells stay absent. */
export function toBody(what: ListKind, values: RowValues, id: string): { body: Body; schema: z.ZodType } {
  if (what === "spindles") return { body: spindleBody(values, id), schema: spindle };
  if (what === "adapters") return { body: adapterBody(values, id), schema: adapterTaken };
  return { body: gaugeBody(values, id), schema: gauge };
}

function spindleBody({ minimum, warning, nominal, maximum, unit, ...rest }: RowValues, spindleId: string): Body {
  const limits = given({ minimumN: minimum, warningN: warning, nominalN: nominal, maximumN: maximum });
  return given({
    machine: "",
    area: "",
    taper: "",
    ...given(rest),
    spindleId,
    limits,
    unitShown: unit,
    state: "inUse",
  });
}

function adapterBody({ scale, scaleUncertainty, ...rest }: RowValues, adapterId: string): Body {
  return given({
    ...rest,
    adapterId,
    scale: scale ?? 1,
    scaleUncertainty: scaleUncertainty ?? ASSUMED_SCALE,
    assumed: scale === undefined,
    version: 1,
    state: "inUse",
  });
}

function gaugeBody({ capacity, resolution, unit: _unit, ...rest }: RowValues, gaugeId: string): Body {
  return given({ ...rest, gaugeId, capacityN: capacity, resolutionN: resolution, state: "inUse" });
}

const given = (all: Body): Body => Object.fromEntries(Object.entries(all).filter(([, value]) => value !== undefined));
