import type { ImportedKind } from "../../app/contract/importViews.ts";

/** What a column can be taken for, and how its cells are read. */
export type FieldForm = "text" | "force" | "unit" | "number" | "whole" | "share" | "date" | "day" | "time";

export type ListField = {
  readonly field: string;
  readonly form: FieldForm;
  readonly needed: boolean;
  /** Several columns may be this field. */
  readonly many?: boolean;
  /** Heads that name it, in English and German, less unit, blanks and marks; the first field that fits takes the column. */
  readonly heads: RegExp;
};

const field = (name: string, form: FieldForm, heads: RegExp, needed = false): ListField => ({
  field: name,
  form,
  needed,
  heads,
});

const note = field(
  "note",
  "text",
  /^(note|notes|remark|remarks|comment|comments|bemerkung(en)?|notiz(en)?|kommentar)$/,
);
const taper = field("taper", "text", /^(taper|spindletaper|interface|cone|kegel|spindelkegel|aufnahme|schnittstelle)$/);
const dueOn = field("dueOn", "date", /^(due|dueon|duedate|nextdue|faellig|faelligam|naechstekalibrierung)$/);
const serial = field("serial", "text", /^(serial|serialno|serialnumber|sn|seriennummer|seriennr|fabriknummer)$/);

const spindleFields: readonly ListField[] = [
  field("name", "text", /^(name|spindle|spindlename|spindel|spindelname|bezeichnung|place|platz)$/, true),
  field("machine", "text", /^(machine|machinename|maschine|maschinenname|anlage)$/),
  field("area", "text", /^(area|hall|building|department|line|bereich|halle|abteilung|linie)$/),
  taper,
  field("unitSerial", "text", /^(unitserial|unitserialnumber|serial|serialno|serialnumber|sn|seriennummer|seriennr)$/),
  field(
    "minimum",
    "force",
    /^(min|minimum|minimumforce|minforce|lowerlimit|mindestkraft|mindestwert|minimalkraft|untergrenze)$/,
  ),
  field("warning", "force", /^(warning|warn|warninglimit|warningforce|warngrenze|warnwert|warnkraft|warnung)$/),
  field("nominal", "force", /^(nominal|nominalforce|nom|target|setpoint|soll|sollkraft|sollwert|nennkraft|nennwert)$/),
  field(
    "maximum",
    "force",
    /^(max|maximum|maximumforce|maxforce|upperlimit|hoechstkraft|hoechstwert|maximalkraft|obergrenze)$/,
  ),
  field("unit", "unit", /^(unit|units|forceunit|einheit|krafteinheit)$/),
  field("limitsFrom", "text", /^(limitsfrom|source|datasheet|herkunft|quelle|datenblatt)$/),
  field(
    "intervalDays",
    "whole",
    /^(interval|intervaldays|intervalindays|days|intervall|intervalltage|pruefintervall|tage)$/,
  ),
  field("intervalToolChanges", "whole", /^(intervaltoolchanges|toolchangesinterval|toolchanges|werkzeugwechsel)$/),
  field("wedgeRatio", "number", /^(wedge|wedgeratio|ratio|keiluebersetzung|uebersetzung)$/),
  field("springPack", "text", /^(spring|springs|springpack|feder|federn|federpaket)$/),
  field("order", "whole", /^(order|position|route|reihenfolge|weg)$/),
  note,
];

const adapterFields: readonly ListField[] = [
  field("name", "text", /^(name|adapter|adaptername|bezeichnung)$/, true),
  { ...taper, needed: true },
  serial,
  field("scale", "number", /^(scale|factor|scalefactor|faktor|skalierung|skalenfaktor)$/),
  field(
    "scaleUncertainty",
    "share",
    /^(scaleuncertainty|uncertainty|standarduncertainty|u|unsicherheit|standardunsicherheit)$/,
  ),
  field(
    "calibratedOn",
    "date",
    /^(calibrated|calibratedon|calibration|calibrationdate|kalibriert|kalibriertam|kalibrierdatum)$/,
  ),
  dueOn,
  note,
];

const gaugeFields: readonly ListField[] = [
  field("name", "text", /^(name|gauge|gaugename|messgeraet|geraet|bezeichnung)$/, true),
  serial,
  field(
    "capacity",
    "force",
    /^(capacity|range|fullscale|ratedforce|ratedcapacity|nennlast|messbereich|endwert)$/,
    true,
  ),
  field("resolution", "force", /^(resolution|step|digit|aufloesung|stufe|ziffernschritt)$/),
  field("unit", "unit", /^(unit|units|forceunit|einheit|krafteinheit)$/),
  field("provedOn", "date", /^(proved|provedon|proof|proofdate|geprueft|geprueftam|pruefdatum)$/),
  dueOn,
  note,
];

/** One clamping of several in a row; their mean is the row's force. */
export const TAKE = "take";

const checkFields: readonly ListField[] = [
  field(
    "spindle",
    "text",
    /^(spindle|spindlename|spindel|spindelname|machine|machinename|maschine|maschinenname|anlage|name|place|platz)$/,
    true,
  ),
  field(
    "day",
    "day",
    /^(date|day|measured|measuredon|measuredat|checked|checkedon|datum|tag|gemessenam|pruefdatum|messdatum)$/,
    true,
  ),
  field("time", "time", /^(time|timeofday|clock|uhrzeit|zeit)$/),
  field(
    "value",
    "force",
    /^(value|force|clampingforce|drawbarforce|retentionforce|reading|result|measured|actual|wert|kraft|spannkraft|einzugskraft|messwert|istwert|ist)$/,
    true,
  ),
  {
    ...field(
      TAKE,
      "force",
      /^(?:(?:take|clamping|force|clampingforce|drawbarforce|value|reading|measurement|trial|run|m|f|wert|kraft|spannkraft|messung|messwert|klemmung|versuch)\d{1,2}|\d{1,2}(?:st|nd|rd|th)?(?:take|clamping|reading|measurement|messung|messwert|klemmung|wert))$/,
    ),
    many: true,
  },
  field("unit", "unit", /^(unit|units|forceunit|einheit|krafteinheit)$/),
  field("adapter", "text", /^(adapter|adaptername)$/),
  field("gauge", "text", /^(gauge|gaugename|instrument|device|messgeraet|geraet|messmittel)$/),
  field(
    "operator",
    "text",
    /^(operator|technician|checkedby|measuredby|by|name|initials|pruefer|bediener|werker|kuerzel|gemessenvon)$/,
  ),
  field("counter", "whole", /^(counter|toolchanges|toolchangecounter|strokes|zaehler|werkzeugwechsel|huebe)$/),
  note,
];

export const fieldsOf: { readonly [K in ImportedKind]: readonly ListField[] } = {
  spindles: spindleFields,
  adapters: adapterFields,
  gauges: gaugeFields,
  checks: checkFields,
};
