import { inBoth } from "../../../words/inBoth.ts";

/** What the result of a proof says. */
export const resultTexts = inBoth({
  classFrom: [
    (name: string, from: string, to: string) => `Class ${name} from ${from} to ${to}.`,
    (name: string, from: string, to: string) => `Klasse ${name} von ${from} bis ${to}.`,
  ],
  noClass: ["No class.", "Keine Klasse."],
  conforming: [
    "Conforming: every step lies within the permissible error.",
    "Konform: Jede Stufe liegt in der erlaubten Abweichung.",
  ],
  nonConforming: [
    "Not conforming: at least one step lies beyond the permissible error.",
    "Nicht konform: Mindestens eine Stufe liegt außerhalb der erlaubten Abweichung.",
  ],
  undecided: [
    "Undecided: the uncertainty reaches over the permissible error.",
    "Offen: Die Unsicherheit reicht über die erlaubte Abweichung.",
  ],
  worst: [
    (error: string, at: string, u: string) => `Its greatest error is ${error} at ${at}; there it is known to ${u}.`,
    (error: string, at: string, u: string) =>
      `Die größte Abweichung ist ${error} bei ${at}; dort ist sie auf ${u} bekannt.`,
  ],
  good: ["The gauge may be trusted as it was.", "Dem Messgerät ist zu trauen wie bisher."],
  off: [
    "The gauge reads otherwise than its curve so far says. What was measured with it since its last good proof is in doubt.",
    "Das Messgerät zeigt anders, als seine bisherige Kurve sagt. Was seit seiner letzten guten Prüfung damit gemessen wurde, ist zweifelhaft.",
  ],
  cannotTell: [
    "Whether it changed cannot be told from these readings.",
    "Ob es sich verändert hat, ist aus diesen Messwerten nicht zu sagen.",
  ],
  change: [
    (share: string, u: string, at: string) => `Against the curve before: ${share} ± ${u} at ${at}.`,
    (share: string, u: string, at: string) => `Gegen die Kurve davor: ${share} ± ${u} bei ${at}.`,
  ],
  refused: ["No result yet:", "Noch kein Ergebnis:"],
  steps: ["Step by step", "Stufe für Stufe"],
  colForce: [(unit: string) => `force, ${unit}`, (unit: string) => `Kraft, ${unit}`],
  colN: ["readings", "Messwerte"],
  colNet: [(unit: string) => `shown, ${unit}`, (unit: string) => `angezeigt, ${unit}`],
  colError: [(unit: string) => `error, ${unit}`, (unit: string) => `Abweichung, ${unit}`],
  colErrorPct: ["error, %", "Abweichung, %"],
  colU: ["U of it, %", "U davon, %"],
  colK: ["k", "Faktor k"],
  colB: ["b, turned, %", "b, gedreht, %"],
  colBPrime: ["b′, not turned, %", "b′, nicht gedreht, %"],
  colFc: ["off the curve, %", "neben der Kurve, %"],
  colV: ["falling, %", "fallend, %"],
  colClass: ["class", "Klasse"],
  colAllowed: ["permitted, %", "erlaubt, %"],
  colVerdict: ["so", "also"],
  "is.conforming": ["within", "innerhalb"],
  "is.nonConforming": ["beyond", "außerhalb"],
  "is.undecided": ["undecided", "offen"],
  zeroAndCreep: [
    (zero: string, creep: string) => `Change of the zero ${zero}, creep ${creep}, of the greatest load.`,
    (zero: string, creep: string) => `Änderung der Null ${zero}, Kriechen ${creep}, von der größten Last.`,
  ],
  unknown: ["not read", "nicht gelesen"],
  coverage: [
    (share: string) => `U: expanded uncertainty, ${share} coverage.`,
    (share: string) => `U: erweiterte Messunsicherheit, ${share} Überdeckung.`,
  ],
  curve: ["The curve", "Die Kurve"],
  curveIs: [
    (unit: string) => `Shown, in ${unit}, for a force x in ${unit}, zero taken off.`,
    (unit: string) => `Angezeigt, in ${unit}, für eine Kraft x in ${unit}, Null abgezogen.`,
  ],
  colTerm: ["term", "Glied"],
  colCoefficient: ["coefficient", "Koeffizient"],
  colSd: ["standard deviation", "Standardabweichung"],
  constant: ["constant", "Konstante"],
  fitIs: [
    (sd: string, df: string, r2: string) =>
      `Residual standard deviation ${sd} with ${df} degrees of freedom; R² = ${r2}.`,
    (sd: string, df: string, r2: string) =>
      `Standardabweichung der Residuen ${sd} mit ${df} Freiheitsgraden; R² = ${r2}.`,
  ],
  lack: [
    (f: string, p: string) => `Lack of fit: F = ${f}, p = ${p}.`,
    (f: string, p: string) => `Anpassungsmangel: F = ${f}, p = ${p}.`,
  ],
  lowerLimit: [
    (factor: string, aa: string, a: string) =>
      `Lower limit factor ${factor}: class AA could begin at ${aa}, class A at ${a}.`,
    (factor: string, aa: string, a: string) =>
      `Faktor der unteren Grenze ${factor}: Klasse AA könnte bei ${aa} beginnen, Klasse A bei ${a}.`,
  ],
  budget: ["Where the uncertainty comes from", "Woher die Unsicherheit kommt"],
  budgetAt: ["At the load", "Bei der Last"],
  colSource: ["from", "aus"],
  colStandard: [(unit: string) => `u, ${unit}`, (unit: string) => `u in ${unit}`],
  colPercent: ["share of the load, %", "Anteil an der Last, %"],
  colDf: ["degrees of freedom", "Freiheitsgrade"],
  many: ["many", "viele"],
  together: ["together", "zusammen"],
  expanded: [(k: string) => `expanded, k = ${k}`, (k: string) => `erweitert, k = ${k}`],
  remarks: ["What to know of it", "Was dazu zu wissen ist"],
  notAccredited: ["This is not an accredited certificate.", "Dies ist kein akkreditierter Kalibrierschein."],
  errorsTitle: ["Errors", "Abweichungen"],
  errorsAbout: [
    (n: string) => `Mean error of ${n} steps with its uncertainty; open marks: single runs.`,
    (n: string) => `Mittlere Abweichung von ${n} Stufen mit ihrer Unsicherheit; offene Zeichen: einzelne Läufe.`,
  ],
  errorsAllowed: [
    (share: string) => `Between the dashed lines: permitted, ±${share}.`,
    (share: string) => `Zwischen den gestrichelten Linien: erlaubt, ±${share}.`,
  ],
  residualsTitle: ["What the curve leaves", "Was die Kurve übrig lässt"],
  residualsAbout: [
    (sd: string) => `Each reading less the curve; standard deviation ${sd}.`,
    (sd: string) => `Jeder Messwert weniger die Kurve; Standardabweichung ${sd}.`,
  ],
  curveTitle: ["Shown against force", "Anzeige gegen Kraft"],
  curveAbout: [
    (degree: string) => `The steps and the curve of degree ${degree} through them.`,
    (degree: string) => `Die Stufen und die Kurve vom Grad ${degree} durch sie.`,
  ],
  axisForce: [(unit: string) => `force, ${unit}`, (unit: string) => `Kraft, ${unit}`],
  axisError: ["error, %", "Abweichung, %"],
  axisResidual: [(unit: string) => `residual, ${unit}`, (unit: string) => `Residuum, ${unit}`],
  axisShown: [(unit: string) => `shown, ${unit}`, (unit: string) => `angezeigt, ${unit}`],
  permitted: ["permitted", "erlaubt"],
  mean: ["mean", "Mittel"],
  runOf: [(run: string) => `run ${run}`, (run: string) => `Lauf ${run}`],
  colWhich: ["which", "welche"],
  pointMean: [
    (force: string, error: string, u: string) => `${force}: mean error ${error} ± ${u}`,
    (force: string, error: string, u: string) => `${force}: mittlere Abweichung ${error} ± ${u}`,
  ],
  pointStep: [
    (force: string, shown: string) => `${force}: shown ${shown}`,
    (force: string, shown: string) => `${force}: angezeigt ${shown}`,
  ],
});
