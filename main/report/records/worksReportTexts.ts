import { inBoth } from "../../../app/words/inBoth.ts";

/** Everything the summary of the works says beside the words it shares with the screens. */
export const worksReportTexts = inBoth({
  title: [(name: string) => `Summary of ${name}`, (name: string) => `Übersicht: ${name}`],
  theWorks: ["the works", "das Werk"],
  subject: ["Clamping forces of all spindles", "Spannkräfte aller Spindeln"],
  inUse: ["spindles in use", "Spindeln in Betrieb"],
  never: ["never measured", "nie gemessen"],
  gauge: [(name: string) => `gauge ${name}`, (name: string) => `Messgerät ${name}`],
  adapter: [(name: string) => `adapter ${name}`, (name: string) => `Adapter ${name}`],
  or: [" or ", " oder "],
  moved: [
    (which: string, n: number, of: number, share: string, since: string) =>
      `This may be off: ${which}. ${n} of ${of} spindles measured with it moved together by about ${share} since ${since}. Prove it before the spindles are blamed.`,
    (which: string, n: number, of: number, share: string, since: string) =>
      `Das könnte falsch messen: ${which}. ${n} von ${of} damit gemessenen Spindeln bewegten sich seit ${since} gemeinsam um etwa ${share}. Erst prüfen, dann die Spindeln verdächtigen.`,
  ],
  ranking: ["What to look after first", "Was zuerst dran ist"],
  spindle: ["spindle", "Spindel"],
  verdict: ["verdict", "Urteil"],
  lastForce: ["last force", "letzte Kraft"],
  fromBaseline: ["from baseline", "Änderung"],
  why: ["why it stands here", "warum hier"],
  reached: ["limit reached", "Grenze erreicht"],
  due: ["due", "fällig"],
  past: [(day: string) => `${day}, past`, (day: string) => `${day}, vorbei`],
  "why.stopped": ["a stop stands", "ein Stopp steht"],
  "why.belowMinimum": ["below the builder's minimum", "unter der Mindestkraft"],
  "why.verdictAct": ["last verdict: act", "letztes Urteil: handeln"],
  "why.riskAtRound": [
    "may be below minimum at the next check",
    "bei der nächsten Prüfung vielleicht unter der Mindestkraft",
  ],
  "why.belowWarning": ["below the warning", "unter der Warngrenze"],
  "why.reachesMinimum": ["on the way to the minimum", "auf dem Weg zur Mindestkraft"],
  "why.reachesWarning": ["on the way to the warning", "auf dem Weg zur Warngrenze"],
  "why.verdictWatch": ["last verdict: watch", "letztes Urteil: beobachten"],
  "why.neverMeasured": ["never measured", "nie gemessen"],
  "why.cannotTell": ["cannot tell", "unklar"],
  "why.steady": ["steady", "stabil"],
  changed: [(day: string) => `What changed since ${day}`, (day: string) => `Was sich seit ${day} geändert hat`],
  counts: [
    (checks: number, ended: number, events: number) =>
      `${checks} checks measured, ${ended} made void or replaced, ${events} services and events.`,
    (checks: number, ended: number, events: number) =>
      `${checks} Prüfungen gemessen, ${ended} ungültig oder ersetzt, ${events} Wartungen und Ereignisse.`,
  ],
  before: ["verdict before", "Urteil davor"],
  now: ["verdict now", "Urteil jetzt"],
  since: ["checks since", "Prüfungen seither"],
  same: ["No spindle has another verdict than then.", "Keine Spindel hat ein anderes Urteil als damals."],
  date: ["date", "Tag"],
  what: ["what", "was"],
  parts: ["parts and note", "Teile und Bemerkung"],
});
