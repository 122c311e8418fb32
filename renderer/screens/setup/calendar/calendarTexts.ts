import { inBoth } from "../../../words/inBoth.ts";

/** What the works' calendar says. */
export const calendarTexts = inBoth({
  title: ["Works calendar", "Betriebskalender"],
  why: [
    "Due dates and rounds keep to working days: what falls due on a day the works are closed is due on the working day before.",
    "Fälligkeiten und Rundgänge halten sich an Arbeitstage: Was an einem geschlossenen Tag fällig würde, ist am Arbeitstag davor fällig.",
  ],
  weekdays: ["Open on", "Geöffnet am"],
  noDay: ["The works must be open on some day.", "An einem Tag muss der Betrieb offen sein."],
  noneClosed: ["No holidays or shut-downs yet.", "Noch keine Feiertage oder Schließungen."],
  from: ["Closed from", "Geschlossen von"],
  to: ["to", "bis"],
  toHint: ["Empty: that one day.", "Leer: nur dieser Tag."],
  wrongSpan: ["A first day, and a last one not before it.", "Ein erster Tag und ein letzter, der nicht davor liegt."],
  add: ["Add closed days", "Schließung hinzufügen"],
  remove: ["Take away", "Wegnehmen"],
  span: [(from: string, to: string) => `${from} to ${to}`, (from: string, to: string) => `${from} bis ${to}`],
  saved: ["Kept. Due dates follow it now.", "Gespeichert. Die Fälligkeiten richten sich jetzt danach."],
});
