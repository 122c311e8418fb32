import { inBoth } from "../../words/inBoth.ts";

/** Heads of the list of spindles as a table for spreadsheets. */
export const tableTexts = inBoth({
  name: ["spindle", "Spindel"],
  machine: ["machine", "Maschine"],
  area: ["area", "Bereich"],
  taper: ["taper", "Kegel"],
  verdict: ["verdict", "Urteil"],
  unit: ["unit", "Einheit"],
  force: ["last force", "letzte Kraft"],
  expanded: ["expanded uncertainty", "erweiterte Unsicherheit"],
  measured: ["measured", "gemessen"],
  why: ["why", "warum"],
  minimum: ["minimum", "Mindestkraft"],
  warning: ["warning limit", "Warngrenze"],
  nominal: ["nominal", "Sollkraft"],
  maximum: ["maximum", "Höchstkraft"],
  due: ["due", "fällig"],
});
