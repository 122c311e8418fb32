import { inBoth } from "../../../app/words/inBoth.ts";

/** What a proof's report says of what came out. */
export const proofResultTexts = inBoth({
  conformityTitle: ["Statement of conformity", "Aussage zur Konformität"],
  noStatement: [
    "None is made: no permissible error was stated for this proof.",
    "Es wird keine getroffen: Für diese Prüfung wurde keine erlaubte Abweichung genannt.",
  ],
  mpe: ["permissible error", "erlaubte Abweichung"],
  "mpe.relative": [(share: string) => `${share} of the load`, (share: string) => `${share} der Last`],
  "mpe.ofGreatest": [
    (share: string) => `${share} of the greatest load`,
    (share: string) => `${share} der größten Last`,
  ],
  rule: ["decision rule", "Entscheidungsregel"],
  overall: ["all steps together", "alle Stufen zusammen"],
  allowedIn: [(unit: string) => `allowed, ${unit}`, (unit: string) => `erlaubt, ${unit}`],
  statement: ["statement", "Aussage"],
  odds: ["probability", "Wahrscheinl."],

  curve: ["Curve", "Kurve"],
  curveIs: [
    (degree: number, unit: string) =>
      `Net indication as a polynomial of degree ${degree} in the reference force, both in ${unit}, fitted by least squares.`,
    (degree: number, unit: string) =>
      `Nettoanzeige als Polynom vom Grad ${degree} der Referenzkraft, beide in ${unit}, nach kleinsten Quadraten.`,
  ],
  noConstant: ["No constant was fitted.", "Eine Konstante wurde nicht angepasst."],
  term: ["term", "Glied"],
  coefficient: ["coefficient", "Koeffizient"],
  coefficientSd: ["standard deviation", "Standardabweichung"],
  fitFigures: [
    (s: string, freedom: number, r2: string) =>
      `Residual standard deviation ${s} with ${freedom} degrees of freedom, R² = ${r2}.`,
    (s: string, freedom: number, r2: string) =>
      `Reststandardabweichung ${s} bei ${freedom} Freiheitsgraden, R² = ${r2}.`,
  ],
  lack: [
    (f: string, above: number, below: number, p: string) => `Lack of fit: F(${above}, ${below}) = ${f}, p = ${p}.`,
    (f: string, above: number, below: number, p: string) => `Anpassungstest: F(${above}, ${below}) = ${f}, p = ${p}.`,
  ],
  degrees: ["The degrees that were compared:", "Die verglichenen Grade:"],
  degree: ["degree", "Grad"],
  chosen: ["chosen", "gewählt"],
  pNext: ["p of the next term", "p des nächsten Glieds"],
  pHigher: ["p of all higher terms together", "p aller höheren Glieder zusammen"],
  residualSd: ["residual s", "Rest-s"],
  fell: ["fell by the factor", "fiel um den Faktor"],
  mustFall: ["had to fall by more than", "musste um mehr fallen als"],
  uCurve: [
    (constant: string, share: string) =>
      `Expanded uncertainty at a force F: the root of (${constant})² + (${share} F)²; not below any step.`,
    (constant: string, share: string) =>
      `Erweiterte Unsicherheit bei einer Kraft F: die Wurzel aus (${constant})² + (${share} F)²; nicht unter der einer Stufe.`,
  ],
  inverse: [
    (terms: string) => `For correcting checks, net indication to force in newtons, constant term first: ${terms}.`,
    (terms: string) => `Zum Berichtigen, Nettoanzeige zu Kraft in Newton, Konstante zuerst: ${terms}.`,
  ],
  taken: [
    "The gauge is corrected with it from this proof on.",
    "Das Messgerät wird ab dieser Prüfung damit berichtigt.",
  ],
  notTaken: ["It was not taken into use.", "Sie wurde nicht in Gebrauch genommen."],
  refusedCurve: [
    (why: string) => `No curve for correcting with: ${why}.`,
    (why: string) => `Keine Kurve zum Berichtigen: ${why}.`,
  ],

  budget: ["Uncertainty budget", "Unsicherheitsbudget"],
  budgetWhy: [
    (unit: string) => `Standard uncertainties (k = 1) in ${unit}; u is all of them together.`,
    (unit: string) => `Standardunsicherheiten (k = 1) in ${unit}; u ist alles zusammen.`,
  ],
  freedom: ["eff. df", "eff. FG"],

  foundLeft: ["As found and as left", "Wie vorgefunden und wie hinterlassen"],
  between: [
    (when: string, what: string, who: string) => `Between them, on ${when}: ${what}${who}.`,
    (when: string, what: string, who: string) => `Dazwischen, am ${when}: ${what}${who}.`,
  ],
  alone: ["As found; no adjustment was made after it.", "Wie vorgefunden; danach wurde nichts justiert."],
  aloneLeft: [
    "As left; there is no proof as found beside it.",
    "Wie hinterlassen; eine Prüfung wie vorgefunden gibt es dazu nicht.",
  ],
  change: ["moved since its curve before", "seit der Kurve davor bewegt"],
  changeIs: [
    (share: string, within: string, at: string) => `${share} ± ${within} at ${at}`,
    (share: string, within: string, at: string) => `${share} ± ${within} bei ${at}`,
  ],
  worst: ["greatest error", "größte Abweichung"],
  greatestU: ["greatest U", "größtes U"],
  judged: ["answer", "Antwort"],
  proof: ["proof", "Prüfung"],

  drift: ["Drift against the proofs before", "Drift gegen die Prüfungen davor"],
  fromDay: ["from", "von"],
  toDay: ["to", "bis"],
  moved: ["moved by", "bewegt um"],
  perYear: [
    (share: string, within: string) => `Over all proofs: ${share} ± ${within} a year.`,
    (share: string, within: string) => `Über alle Prüfungen: ${share} ± ${within} im Jahr.`,
  ],
  firstProof: ["This is the first proof on record.", "Dies ist die erste verzeichnete Prüfung."],

  remarks: ["Remarks", "Bemerkungen"],
  pastDue: [
    (day: string) => `The reference was past its own due date (${day}) when it was used.`,
    (day: string) => `Die Referenz war bei der Benutzung über ihre eigene Fälligkeit (${day}) hinaus.`,
  ],
  skipped: [
    (act: string, why: string) => `Step ${act} of the plan was left out: ${why}.`,
    (act: string, why: string) => `Schritt ${act} des Plans wurde ausgelassen: ${why}.`,
  ],
  paused: [
    (when: string, why: string) => `Put down on ${when}: ${why}.`,
    (when: string, why: string) => `Weggelegt am ${when}: ${why}.`,
  ],
  linkLost: ["the port of the gauge was lost", "der Anschluss des Messgeräts ging verloren"],
  referenceLinkLost: ["the port of the reference was lost", "der Anschluss der Referenz ging verloren"],
  clock: [
    "The clock stood before that of the last entry when this was filed.",
    "Beim Ablegen stand die Uhr vor der des letzten Eintrags.",
  ],
  onlyThese: [
    "These results hold for the gauge named here, as it stood on that day, with this reference and under these conditions.",
    "Diese Ergebnisse gelten für das hier genannte Messgerät, wie es an dem Tag war, mit dieser Referenz und unter diesen Bedingungen.",
  ],

  readings: ["Readings as they were taken", "Messwerte, wie sie genommen wurden"],
  time: ["time", "Zeit"],
  run: ["run", "Lauf"],
  position: ["position", "Lage"],
  kindOf: ["reading", "Messwert"],
  "dir.up": ["up", "auf"],
  "dir.down": ["down", "ab"],
  "dir.zeroBefore": ["zero before", "Null vorher"],
  "dir.zeroAfter": ["zero after", "Null nachher"],
  "dir.creep30": ["creep 30 s", "Kriechen 30 s"],
  "dir.creep300": ["creep 300 s", "Kriechen 300 s"],
  shown: [(unit: string) => `shown, ${unit}`, (unit: string) => `Anzeige, ${unit}`],
  replaced: [(why: string) => `taken again: ${why}`, (why: string) => `neu genommen: ${why}`],
  typedIn: ["typed", "getippt"],
  signed: ["Proved by", "Geprüft von"],
  approved: ["Approved by", "Freigegeben von"],
  fileTitle: [(file: string) => `Proof from ${file}`, (file: string) => `Prüfung aus ${file}`],
  fileWhat: ["What it was made from", "Woraus er entstand"],
  file: ["file", "Datei"],
  fileHash: ["its SHA-256", "ihr SHA-256"],
  fileN: ["readings", "Messwerte"],
  fileRuns: ["runs", "Läufe"],
  fileNames: [
    "The file names no gauge, no customer and no conditions: write them on this paper, or lead the proof in the program and file it.",
    "Die Datei nennt weder Messgerät noch Auftraggeber noch Bedingungen: auf diesem Papier ergänzen oder die Prüfung im Programm führen und ablegen.",
  ],
  thisProof: ["this proof", "diese Prüfung"],

  errorsAlt: [
    (n: number) => `Errors of ${n} steps with their expanded uncertainty; the figures stand in the table of results.`,
    (n: number) =>
      `Abweichungen von ${n} Stufen mit ihrer erweiterten Unsicherheit; die Zahlen stehen in der Ergebnistabelle.`,
  ],
  residualsAlt: [
    (n: number) => `What the curve leaves of ${n} readings, run by run; the readings stand in the last table.`,
    (n: number) =>
      `Was die Kurve von ${n} Messwerten übrig lässt, Lauf für Lauf; die Messwerte stehen in der letzten Tabelle.`,
  ],
  allowedName: ["allowed", "erlaubt"],
  runName: [(run: string) => `run ${run}`, (run: string) => `Lauf ${run}`],
});
