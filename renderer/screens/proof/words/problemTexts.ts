import { inBoth } from "../../../words/inBoth.ts";

/** What speaks against a plan, by the core's codes. */
export const problemTexts = inBoth({
  noLoads: ["A plan needs loads above zero.", "Ein Plan braucht Lasten über null."],
  loadsNotRising: [
    (about: string) => `The loads must rise; ${about} comes after a greater one.`,
    (about: string) => `Die Lasten müssen steigen; ${about} folgt auf eine größere.`,
  ],
  sameLoadTwice: [
    (about: string) => `${about} stands twice. Runs repeat loads, one run does not.`,
    (about: string) => `${about} steht doppelt da. Läufe wiederholen Lasten, ein Lauf nicht.`,
  ],
  aboveGaugeCapacity: [
    (about: string) => `${about} lies above the gauge's capacity.`,
    (about: string) => `${about} liegt über der Nennlast des Messgeräts.`,
  ],
  aboveReferenceCapacity: [
    (about: string) => `${about} lies above the reference's capacity.`,
    (about: string) => `${about} liegt über der Nennlast der Referenz.`,
  ],
  noRuns: ["A plan needs at least one run.", "Ein Plan braucht mindestens einen Lauf."],
  runTwice: [
    (about: string) => `Run ${about} stands twice; each run has a label of its own.`,
    (about: string) => `Lauf ${about} steht doppelt da; jeder Lauf hat seinen eigenen Namen.`,
  ],
  tooFewRuns: [
    (about: string) => `The method asks for ${about} runs: with fewer there is no class.`,
    (about: string) => `Das Verfahren will ${about} Läufe: Mit weniger gibt es keine Klasse.`,
  ],
  tooFewPositions: [
    (about: string) => `The method asks for ${about} mounting positions: turn the gauge between runs.`,
    (about: string) => `Das Verfahren will ${about} Einbaulagen: das Messgerät zwischen den Läufen drehen.`,
  ],
  noRepeat: [
    "Two runs at the same position are wanted, to tell the repeatability.",
    "Zwei Läufe in derselben Lage sind verlangt, um die Wiederholbarkeit zu zeigen.",
  ],
  noReversibilityOrCreep: [
    "Falling loads in two runs are wanted, or the creep readings.",
    "Fallende Lasten in zwei Läufen sind verlangt, oder die Kriechwerte.",
  ],
  tooFewLoads: [
    (about: string) => `The method asks for ${about} loads.`,
    (about: string) => `Das Verfahren will ${about} Lasten.`,
  ],
  referencePastDue: [
    (about: string) => `The reference was due for its own calibration on ${about}. It can be used; the report says so.`,
    (about: string) =>
      `Die Referenz war am ${about} zur eigenen Kalibrierung fällig. Sie lässt sich benutzen; der Bericht sagt es.`,
  ],
  notOnRig: [
    (load: string) => `The rig's weights give no load within 5 % of ${load}. Change this load, or add a weight.`,
    (load: string) =>
      `Die Gewichte der Anlage ergeben keine Last innerhalb von 5 % um ${load}. Diese Last ändern oder ein Gewicht hinzunehmen.`,
  ],
  badTimes: [
    "Times and preloads are not below zero, and a reading takes some time.",
    "Zeiten und Vorlasten liegen nicht unter null, und ein Messwert braucht etwas Zeit.",
  ],
});
