import { inBoth } from "../../words/inBoth.ts";

/** What stands around every screen. */
export const shellTexts = inBoth({
  places: ["Places", "Orte"],
  measure: ["Measure", "Messen"],
  spindles: ["Spindles", "Spindeln"],
  dock: ["Dock", "Auslesen"],
  rounds: ["Rounds", "Rundgänge"],
  gauges: ["Gauges", "Messgeräte"],
  records: ["Records", "Einträge"],
  setup: ["Setup", "Einrichten"],
  help: ["Help", "Hilfe"],
  skip: ["To the content", "Zum Inhalt"],
  demoHere: [
    "Demo works: everything here is invented, and nothing of it reaches your own records.",
    "Demo: Alles hier ist erfunden, und nichts davon kommt in Ihre eigenen Einträge.",
  ],
  leaveDemo: ["Leave the demo", "Demo verlassen"],
  lost: [
    "The program does not answer. It is being looked for; what you typed stays here, what was filed is safe.",
    "Das Programm antwortet nicht. Es wird gesucht; Eingetipptes bleibt hier stehen, Abgelegtes ist sicher.",
  ],
  refusedTitle: ["This page is not connected to the program", "Diese Seite ist nicht mit dem Programm verbunden"],
  refused: [
    "For safety the program talks only to pages it has opened itself. Open a page from the program: start Holdfast, or copy the address it shows where it was started.",
    "Aus Sicherheit spricht das Programm nur mit Seiten, die es selbst geöffnet hat. Bitte eine Seite aus dem Programm heraus öffnen: Holdfast starten oder die Adresse nehmen, die es beim Start zeigt.",
  ],
  readOnly: [
    (why: string) => `Nothing can be written just now: ${why}`,
    (why: string) => `Im Augenblick kann nichts geschrieben werden: ${why}`,
  ],
  saveWhatStands: ["Save what stands, or go back to a copy", "Retten, was steht, oder zurück zu einer Kopie"],
  starting: ["Waiting for the program …", "Warten auf das Programm …"],
  screenFailed: ["This screen has failed", "Diese Ansicht ist ausgefallen"],
  screenFailedWhy: [
    "A fault of the program, not of yours. What was filed is safe, and a series in work is kept. Try the screen again, or go to another place.",
    "Ein Fehler des Programms, nicht Ihrer. Abgelegtes ist sicher, eine Messreihe in Arbeit bleibt erhalten. Die Ansicht noch einmal versuchen oder zu einem anderen Ort gehen.",
  ],
  noGauge: ["no gauge connected", "kein Messgerät verbunden"],
  dismiss: ["Dismiss", "Schließen"],
  seconds: [(s: number) => `${s} s`, (s: number) => `${s} s`],
});
