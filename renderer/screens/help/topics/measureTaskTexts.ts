import { inBoth } from "../../../words/inBoth.ts";

export const measureTaskTexts = inBoth({
  title: ["Measure and file", "Messen und ablegen"],
  lead: [
    "From a scanned label to a filed check: scan, clamp three times, space bar.",
    "Vom gescannten Etikett zur abgelegten Prüfung: scannen, dreimal spannen, Leertaste.",
  ],
  caution: [
    "Lock out the machine as its manual says; tool change by hand mode only; hands and sleeves out of the spindle mouth; never beyond the gauge's capacity.",
    "Maschine sichern, wie ihr Handbuch es sagt; Werkzeugwechsel nur im Handbetrieb; Hände und Ärmel weg von der Spindelöffnung; nie über die Nennlast des Messgeräts.",
  ],
  step1: [
    "Clean taper, gripper mouth and adapter. Let the gauge warm up, hold it unloaded as it will sit, and press Zero (Z).",
    "Kegel, Greiferöffnung und Adapter reinigen. Das Messgerät warm werden lassen, unbelastet halten, wie es sitzen wird, und Nullen (Z).",
  ],
  step2: [
    "Scan the spindle's label, or press S and type its first letters. The adapter that fits is proposed; gauge and operator stay from last time.",
    "Das Etikett der Spindel scannen oder S drücken und die ersten Buchstaben tippen. Der passende Adapter wird vorgeschlagen; Messgerät und Prüfer bleiben vom letzten Mal.",
  ],
  step3: [
    "Clamp and release three to five times, each hold at least two seconds. Each clamping comes as a card; one that went wrong is dropped, and stays on record.",
    "Drei- bis fünfmal spannen und lösen, jedes Halten mindestens zwei Sekunden. Jeder Spannvorgang kommt als Karte; ein missratener wird weggelassen und bleibt verzeichnet.",
  ],
  step4: [
    "Look at the verdict and its reasons, then press the space bar: the button says which force goes to which spindle.",
    "Urteil und Gründe ansehen, dann die Leertaste: Der Knopf sagt, welche Kraft zu welcher Spindel geht.",
  ],
  step5: [
    "Wrong spindle? For one minute U takes it back. Later, open the check and make it void, with a reason.",
    "Falsche Spindel? Eine Minute lang nimmt U es zurück. Später die Prüfung öffnen und mit Grund für ungültig erklären.",
  ],
  picture: [
    "Three clampings, the verdict formed, ready to file.",
    "Drei Spannvorgänge, das Urteil steht, bereit zum Ablegen.",
  ],
  note1: [
    "The figure filed is the settled force, one to three seconds after the snap, not the peak of the snap. A range over about 5 % of the mean speaks of friction, dirt or a bad seat (common practice): clean and take it again.",
    "Abgelegt wird die Haltekraft, eine bis drei Sekunden nach dem Zuschnappen, nicht dessen Spitze. Eine Spanne über etwa 5 % vom Mittel spricht für Reibung, Schmutz oder schlechten Sitz (verbreitete Praxis): reinigen und wiederholen.",
  ],
});
