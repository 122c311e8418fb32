import type { ProofRefusalCode } from "../proof/method/proofRefusal.ts";
import type { Speech } from "./Speech.ts";

/** A refusal as an answer or an entry carries it: the core's English sentence, and since code and figures exist, these. */
export type SaidRefusal = {
  readonly said: string | null | undefined;
  readonly why?: { readonly code: string; readonly figures: readonly number[] } | undefined;
};

type German = (...figures: readonly string[]) => string;

/** The core says these in English itself (`app/proof/method/proofRefusal.ts`); each has its German here, or nothing compiles. */
const german: Readonly<Record<ProofRefusalCode, German>> = {
  degreeRange: (degree) => `Eine Kurve hat einen Grad von 1 bis 12, nicht ${degree}`,
  tooFewLoads: (degree, needed, found) =>
    `Grad ${degree} braucht mindestens ${needed} verschiedene Lasten, die Messwerte haben ${found}: mehr Lasten lesen oder einen niedrigeren Grad wählen`,
  noReadingOver: (degree, terms, found) =>
    `Grad ${degree} hat ${terms} Koeffizienten, und es gibt ${found} Messwerte: Keiner bleibt übrig, um die Kurve zu beurteilen`,
  iso376Degree: (degree) => `ISO 376 kennt Kurven vom Grad 1, 2 und 3, nicht ${degree}`,
  noLoad: () => "Eine Arbeitsprüfung braucht mindestens einen Messwert unter einer Last über null",
  twoLoads: () => "Die Kurve eines Messgeräts braucht mindestens zwei verschiedene Lasten",
  notRising: () => "Die Anzeige steigt nicht überall mit der Kraft: Aus ihr lässt sich keine Kurve zurücklesen",
  notAboveZero: () => "Die Anzeige liegt unter der größten Last nicht über null",
  factorNotAboveZero: () => "Jede Last und jede Nettoanzeige der Prüfung eines Adapters muss über null liegen",
  factorRuns: (found) =>
    `Der Faktor eines Adapters braucht mindestens zwei Läufe, nicht ${found}: Seine Streuung von Sitz zu Sitz wäre unbekannt`,
  nothingRead: () => "Es wurde noch nichts unter einer Last gelesen",
  noCurve: () => "Die Messwerte tragen keine Kurve",
  withAdapter: () =>
    "Das Messgerät wurde mit einem Adapter geprüft: Die Kurve ist die von beiden, und der Adapter hat einen eigenen Faktor",
};

/** Why a proof came to nothing, in the reader's language, without a stop. An entry older than the codes, or a newer program's code, keeps its English. */
export function proofRefusalWords({ said, why }: SaidRefusal, speech: Speech): string {
  const known = speech.language === "de" && why !== undefined && Object.hasOwn(german, why.code);
  return known
    ? german[why.code as ProofRefusalCode](...why.figures.map((figure) => speech.number(figure))) // just found there
    : (said ?? "");
}
