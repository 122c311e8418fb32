import { inBoth } from "../../../words/inBoth.ts";

/** Cautions of a reference load, by the core's codes. */
export const cautionTexts = inBoth({
  standClear: [
    "Nobody under or beside the load: weights fall, and a stretched load train springs back when something gives.",
    "Niemand unter oder neben der Last: Gewichte fallen, und ein gespannter Strang schnellt zurück, wenn etwas nachgibt.",
  ],
  noOverload: [
    "Never load beyond the smallest capacity in the load train: gauge, adapter, reference and frame.",
    "Nie über die kleinste Nennlast im Strang belasten: Messgerät, Adapter, Referenz und Rahmen.",
  ],
  straightLoad: [
    "Pull or push in line: a side load breaks short gauges and spoils the reading.",
    "In der Achse ziehen oder drücken: Eine Querlast zerbricht kurze Messgeräte und verdirbt den Wert.",
  ],
  guardedRig: [
    "Check screws, threads and hooks before each load, keep hands out of the gap, and load and unload slowly.",
    "Vor jeder Last Schrauben, Gewinde und Haken ansehen, Hände aus dem Spalt, langsam be- und entlasten.",
  ],
  rulesFirst: [
    "The manuals of rig and gauge, local rules and trained people come before anything said here.",
    "Die Handbücher von Prüfstand und Messgerät, örtliche Regeln und geschulte Leute gehen allem hier Gesagten vor.",
  ],
  nearCapacity: [
    "This load lies near the gauge's capacity: approach it slowly and stop at the target.",
    "Diese Last liegt nahe der Nennlast des Messgeräts: langsam annähern und am Ziel anhalten.",
  ],
});
