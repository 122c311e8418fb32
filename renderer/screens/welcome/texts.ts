import { inBoth } from "../../words/inBoth.ts";

/** The first start. */
export const welcomeTexts = inBoth({
  title: ["Welcome to Holdfast", "Willkommen bei Holdfast"],
  what: [
    "It reads a force gauge held in a machine spindle, files each clamping force to its spindle, judges it with its uncertainty, and tells which spindle needs service when.",
    "Es liest einen Kraftmesser in einer Maschinenspindel, legt jede Einzugskraft bei ihrer Spindel ab, beurteilt sie mit ihrer Unsicherheit und sagt, welche Spindel wann Wartung braucht.",
  ],
  begin: ["Begin with your own spindle", "Mit der eigenen Spindel anfangen"],
  step1: ["Name a spindle", "Eine Spindel nennen"],
  step1Why: [
    "Its name and taper are enough; the builder's figures can follow.",
    "Name und Kegel genügen; die Zahlen des Herstellers können folgen.",
  ],
  step1Act: ["Add a spindle", "Spindel anlegen"],
  step2: ["Connect the gauge", "Das Messgerät verbinden"],
  step2Why: [
    "Plug it in and choose its port; its lines are learned. Without one, values can be typed in.",
    "Einstecken und den Anschluss wählen; seine Zeilen werden gelernt. Ohne eines lassen sich Werte eintippen.",
  ],
  step2Act: ["Connect a gauge", "Messgerät verbinden"],
  step3: ["Clamp three times, file", "Dreimal spannen, ablegen"],
  step3Why: [
    "The space bar files. The first check becomes the baseline.",
    "Die Leertaste legt ab. Die erste Prüfung wird der Ausgangswert.",
  ],
  step3Act: ["To Measure", "Zum Messen"],
  done: ["done", "erledigt"],
  tryTitle: ["Or look around first", "Oder erst umsehen"],
  tryWhy: [
    "The demo works has spindles over three years, a gauge gone off, and a simulated gauge to play with. It lies beside your data and never mixes with it.",
    "Die Demo hat Spindeln über drei Jahre, ein Messgerät, das danebenliegt, und ein simuliertes zum Spielen. Sie liegt neben Ihren Daten und mischt sich nie mit ihnen.",
  ],
  tryAct: ["Open the demo", "Demo öffnen"],
  caution: [
    "A clamping unit holds tens of kilonewtons. Before any of it: lock out the machine as its manual says; the builder's manual and local rules come first.",
    "Eine Spanneinheit hält Dutzende Kilonewton. Vor allem anderen: die Maschine sichern, wie ihr Handbuch es sagt; Handbuch und örtliche Regeln gehen vor.",
  ],
  cautionTitle: ["Caution:", "Vorsicht:"],
});
