import { stringify } from "csv-stringify/sync";
import { formatForceFigure } from "../../../app/quantity/formatForce.ts";
import { labelCode } from "../labels/labelCode.ts";
import type { SheetFacts } from "./sheetFacts.ts";
import { sheetTexts } from "./sheetTexts.ts";

/**
 * A round as a table, for those who carry a tablet instead of paper. Commas and CRLF with a byte-order mark, so that
 * spreadsheets take the umlauts; a cell that would begin a formula there is made plain text.
 * @see RFC 4180
 */
export function roundCsv(facts: SheetFacts, language: "en" | "de"): string {
  const text = sheetTexts[language];
  const { round, unit, adapterName } = facts;
  const figure = (forceN: number | undefined) => (forceN === undefined ? "" : formatForceFigure(forceN, unit));
  const head = [
    text.place,
    text.spindle,
    text.machine,
    text.area,
    text.taper,
    text.adapter,
    `${text.expected} ${unit}`,
    `${text.minimum} ${unit}`,
    `${text.warning} ${unit}`,
    `${text.nominal} ${unit}`,
    `${text.maximum} ${unit}`,
    ...[1, 2, 3, 4, 5].map((n) => `${text.values} ${n} ${unit}`),
    text.time,
    text.counter,
    text.remark,
    text.code,
  ];
  const rows = round.stops.map((stop) => {
    const { minimumN, warningN, nominalN, maximumN } = stop.limits;
    return [
      stop.location ?? "",
      stop.name,
      stop.machine,
      stop.area,
      stop.taper,
      adapterName(stop) ?? "",
      ...[stop.expectedN, minimumN, warningN, nominalN, maximumN].map(figure),
      ...Array<string>(8).fill(""),
      labelCode("spindle", stop.spindleId),
    ];
  });
  return stringify([head, ...rows], { bom: true, record_delimiter: "windows", escape_formulas: true });
}
