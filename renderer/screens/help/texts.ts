import { inBoth } from "../../words/inBoth.ts";

/** Help: its contents and its first page. */
export const helpTexts = inBoth({
  title: ["Help", "Hilfe"],
  lead: [
    "Everything here is on this computer. F1 or ? opens the page that fits the screen you are on.",
    "Alles hier liegt auf diesem Rechner. F1 oder ? öffnet die Seite, die zum Bildschirm passt.",
  ],
  contents: ["Contents", "Inhalt"],
  tasks: ["Getting things done", "Was zu tun ist"],
  understand: ["Understanding it", "Was dahintersteht"],
  connect: ["Connect a gauge", "Ein Messgerät verbinden"],
  measure: ["Measure and file", "Messen und ablegen"],
  verdicts: ["What the verdicts mean", "Was die Urteile bedeuten"],
  round: ["Walk and dock a round", "Rundgang gehen und auslesen"],
  proof: ["Prove a gauge", "Ein Messgerät prüfen"],
  service: ["Service and baseline", "Wartung und Ausgangswert"],
  backup: ["Backup and restore", "Sichern und zurückholen"],
  import: ["Bring old lists in", "Alte Listen übernehmen"],
  simulated: ["The simulated gauge", "Das simulierte Messgerät"],
  statistics: ["The statistics, with your figures", "Die Statistik mit Ihren Zahlen"],
  glossary: ["Terms", "Begriffe"],
  startTitle: ["The way through the house", "Der Weg durchs Haus"],
  start1: [
    "Measure: choose the spindle, clamp three to five times, press the space bar. The check is filed with its uncertainty.",
    "Messen: Spindel wählen, drei- bis fünfmal spannen, Leertaste drücken. Die Prüfung ist mit ihrer Unsicherheit abgelegt.",
  ],
  start2: [
    "Spindles: the list stands in the order in which to act; each page says why, how fast and until when.",
    "Spindeln: Die Liste steht in der Reihenfolge des Handelns; jede Seite sagt warum, wie schnell und bis wann.",
  ],
  start3: [
    "Rounds and Dock: print what is due, walk it, read the gauge's memory, look, accept once.",
    "Rundgänge und Auslesen: drucken, was fällig ist, hingehen, den Speicher des Messgeräts lesen, ansehen, einmal annehmen.",
  ],
  start4: [
    "Gauges: a gauge is proved against a reference; where it was off, the checks it touched are named.",
    "Messgeräte: Jedes wird gegen eine Referenz geprüft; lag es daneben, werden die betroffenen Prüfungen genannt.",
  ],
  keysTitle: ["Keys", "Tasten"],
  keys: [
    "On Measure: space files, Z zeroes, S A G O choose spindle, adapter, gauge and operator, N notes, R takes the last clamping again, D drops it, T types a value in, F fills the screen. U takes the last filing back for a minute. Single letters can be turned off under Setup.",
    "Beim Messen: Leertaste legt ab, Z nullt, S A G O wählen Spindel, Adapter, Messgerät und Prüfer, N notiert, R wiederholt den letzten Spannvorgang, D lässt ihn weg, T tippt einen Wert ein, F füllt den Bildschirm. U nimmt das letzte Ablegen eine Minute lang zurück. Einzelne Buchstaben lassen sich unter Einrichten abschalten.",
  ],
  cautionTitle: ["Caution", "Vorsicht"],
  caution1: [
    "Lock the machine out as its manual says. The spindle stands still; tool change by hand.",
    "Die Maschine sichern, wie ihr Handbuch es sagt. Die Spindel steht; Werkzeugwechsel von Hand.",
  ],
  caution2: [
    "Hands, sleeves and cables stay out of the spindle mouth: the unit closes in a fraction of a second with tens of kilonewtons.",
    "Hände, Ärmel und Kabel bleiben aus der Spindelöffnung: Die Einheit schließt im Bruchteil einer Sekunde mit Dutzenden Kilonewton.",
  ],
  caution3: [
    "Never turn the spindle or move a tool-change arm with the gauge in it, and never load the gauge beyond its capacity.",
    "Nie die Spindel drehen oder einen Wechselarm bewegen, solange das Messgerät sitzt; es nie über seine Nennlast belasten.",
  ],
  caution4: [
    "Disc springs store energy: taking a clamping unit apart is work for trained people with the builder's tools.",
    "Tellerfedern speichern Energie: Eine Spanneinheit zu zerlegen ist Arbeit für Geschulte mit dem Werkzeug des Herstellers.",
  ],
  caution5: [
    "The builder's manual, local rules and licensed practice go before anything this program says. A report from here is no accredited certificate.",
    "Handbuch des Herstellers, örtliche Regeln und zugelassene Praxis gehen allem vor, was dieses Programm sagt. Ein Bericht von hier ist kein akkreditierter Schein.",
  ],
});
