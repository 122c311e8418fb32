import { AppError } from "../../app/contract/result.ts";
import { toNewtons } from "../../app/quantity/forceUnits.ts";
import { parseForce } from "../../app/quantity/parseForce.ts";
import { parseForceUnit } from "../../app/quantity/parseForceUnit.ts";
import type { DumpRecord } from "../../app/round/dump/DumpReading.ts";

/**
 * What was written on a sheet, typed in, as records of a memory that names its spindles. A bare number is in the unit
 * printed on the sheet.
 * @throws AppError  a text that is no force, with the field it stands in
 */
export function typedRecords(
  values: readonly { readonly spindleId: string; readonly texts: readonly string[] }[],
  unitOnSheet: string,
): (DumpRecord & { readonly spindleId: string })[] {
  const sheet = parseForceUnit(unitOnSheet);
  const unit = sheet.kind === "force" ? sheet.unit : "kN";
  let line = 0;
  return values.flatMap(({ spindleId, texts }, i) =>
    texts.flatMap((raw, k) => {
      if (raw.trim() === "") return [];
      line += 1;
      const force = parseForce(raw);
      const field = `values.${i}.texts.${k}`;
      if (force.kind !== "force" && force.kind !== "bare")
        throw new AppError("invalid", force.reason, { key: `force.${force.kind}`, field });
      const shown = force.kind === "force" ? force.unit : unit;
      const valueN = force.kind === "force" ? force.forceN : toNewtons(force.value, unit);
      if (!(valueN > 0))
        throw new AppError("invalid", "A clamping force is above zero.", { key: "force.notPositive", field });
      return [
        {
          spindleId,
          line,
          raw,
          number: undefined,
          figure: force.kind === "force" ? raw.trim() : `${raw.trim()} ${unit}`,
          valueN,
          unit: shown,
          refused: undefined,
          stamp: undefined,
          gaugeMs: undefined,
          badDate: false,
          location: undefined,
          kind: undefined,
        },
      ];
    }),
  );
}
