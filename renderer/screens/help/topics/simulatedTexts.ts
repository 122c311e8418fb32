import { inBoth } from "../../../words/inBoth.ts";

export const simulatedTexts = inBoth({
  title: ["The simulated gauge", "Das simulierte Messgerät"],
  lead: [
    "A gauge in a spindle, made of arithmetic, to try everything without hardware. It sends lines as a real one does; everything behind them is the same.",
    "Ein Messgerät in einer Spindel, aus Rechnung gemacht, um alles ohne Gerät zu probieren. Es sendet Zeilen wie ein echtes; alles dahinter ist dasselbe.",
  ],
  step1: [
    "Connect Simulated gauge, on Measure or under Setup.",
    "Simuliertes Messgerät verbinden, beim Messen oder unter Einrichten.",
  ],
  step2: ["Clamp and Release (C) work the spindle.", "Spannen und Lösen (C) bedienen die Spindel."],
  step3: [
    "Faults: let the gripper run dry, grease it, break a spring, put new ones in, knock the gauge, overload it, pull the plug. Watch what the figure, the flags and the verdict make of it.",
    "Störungen: den Greifer trocken laufen lassen, schmieren, eine Feder brechen, neue einsetzen, das Messgerät anstoßen, überlasten, den Stecker ziehen. Ansehen, was Anzeige, Merkmale und Urteil daraus machen.",
  ],
  picture: ["The simulated gauge with its faults.", "Das simulierte Messgerät mit seinen Störungen."],
  note1: [
    "In the demo everything is invented and lies in a file of its own. In your own works, a simulated value is real to the records: file it only to a spindle made for trying.",
    "In der Demo ist alles erfunden und liegt in einer eigenen Datei. Im eigenen Werk zählt ein simulierter Wert für die Einträge als echt: nur bei einer Probespindel ablegen.",
  ],
});
