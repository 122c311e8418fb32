import { inBoth } from "../../../../words/inBoth.ts";

/** Plans a laboratory keeps under names of its own. */
export const ownPlanTexts = inBoth({
  plan: ["Plan", "Prüfplan"],
  usual: ["the method's usual plan", "der übliche Plan des Verfahrens"],
  changed: [
    (name: string) => `Changed since: it will not be filed as “${name}” unless you change that plan below.`,
    (name: string) =>
      `Seither geändert: Es wird nicht als „${name}“ abgelegt, außer Sie ändern jenen Plan weiter unten.`,
  ],
  keep: ["Keep this as a plan of our own", "Dies als eigenen Plan behalten"],
  keepTitle: ["Keep this plan", "Diesen Plan behalten"],
  keepWhy: [
    "Loads, runs and times as they stand in the form. Every proof after that can take it by its name.",
    "Lasten, Läufe und Zeiten, wie sie im Formular stehen. Jede weitere Prüfung kann ihn unter seinem Namen nehmen.",
  ],
  change: [(name: string) => `Change “${name}”`, (name: string) => `„${name}“ ändern`],
  changeWhy: [
    "It takes the loads, runs and times as they stand in the form. Proofs filed by it keep the plan as it was.",
    "Er übernimmt Lasten, Läufe und Zeiten, wie sie im Formular stehen. Abgelegte Prüfungen behalten den Plan, wie er war.",
  ],
  name: ["Name", "Name"],
  retire: [(name: string) => `Retire “${name}”`, (name: string) => `„${name}“ stilllegen`],
  retired: ["Retired plans", "Stillgelegte Pläne"],
  takeBack: [(name: string) => `Use “${name}” again`, (name: string) => `„${name}“ wieder benutzen`],
  fixFirst: [
    "The form holds a figure that cannot be. Set it right, then keep the plan.",
    "Im Formular steht eine Angabe, die nicht sein kann. Erst berichtigen, dann den Plan behalten.",
  ],
  kept: [(name: string) => `Plan “${name}” kept.`, (name: string) => `Plan „${name}“ behalten.`],
  isRetired: [
    (name: string) => `Plan “${name}” retired. It can be used again from the same place.`,
    (name: string) => `Plan „${name}“ stillgelegt. Am selben Ort lässt er sich wieder benutzen.`,
  ],
});
