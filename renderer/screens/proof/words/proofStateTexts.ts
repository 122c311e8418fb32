import { inBoth } from "../../../words/inBoth.ts";

/** Why a reading is not taken, by the core's codes. */
export const refusalTexts = inBoth({
  notNext: [
    "This step is not the next one; another page may have gone on. Look again.",
    "Dieser Schritt ist nicht der nächste; eine andere Seite ist vielleicht weiter. Bitte noch einmal ansehen.",
  ],
  putDown: ["The proof is put down. Take it up first.", "Die Prüfung liegt. Zuerst wieder aufnehmen."],
  finished: ["Everything is taken already.", "Es ist schon alles übernommen."],
  notSteady: ["The load still moves. Wait until it stands.", "Die Last bewegt sich noch. Warten, bis sie steht."],
  overload: ["Overload: unload now.", "Überlast: jetzt entlasten."],
  linkLost: ["The gauge was lost while it was read.", "Das Messgerät ging beim Lesen verloren."],
  aboveCapacity: ["Above the gauge's capacity: unload now.", "Über der Nennlast des Messgeräts: jetzt entlasten."],
  offTarget: ["Not at the target yet.", "Noch nicht am Ziel."],
  notUnloaded: ["Something still pulls. Unload wholly.", "Es zieht noch etwas. Ganz entlasten."],
  sameLoadTwice: [
    "This is the load of the step before. Go on to the next.",
    "Das ist die Last des vorigen Schritts. Weiter zur nächsten.",
  ],
  reasonMissing: ["A reason is needed.", "Ein Grund fehlt."],
  neverTaken: ["This step was never taken.", "Dieser Schritt wurde nie übernommen."],
  notPutDown: ["The proof is not put down.", "Die Prüfung liegt nicht."],
  noLink: ["The gauge is not connected.", "Das Messgerät ist nicht verbunden."],
  noReferenceLink: ["The reference is not connected.", "Die Referenz ist nicht verbunden."],
  otherGauge: [
    "Another gauge is connected than the one this proof is of.",
    "Es ist ein anderes Messgerät verbunden als das, das hier geprüft wird.",
  ],
  tooFewReadings: ["Too few readings yet.", "Noch zu wenige Messwerte."],
  waiting: ["It has not stood long enough yet.", "Sie steht noch nicht lange genug."],
});

/** What a proof came to, and why the next one is due when it is. */
export const judgedTexts = inBoth({
  good: ["good", "gut"],
  off: ["off", "daneben"],
  cannotTell: ["cannot tell", "nicht zu sagen"],
  found: ["as found", "wie vorgefunden"],
  left: ["as left", "wie hinterlassen"],
  firstProof: ["the first proof: the usual interval", "die erste Prüfung: der übliche Abstand"],
  beyondAllowed: [
    "it changed by more than allowed: half the interval",
    "es änderte sich um mehr als erlaubt: halber Abstand",
  ],
  nearAllowed: ["it changed by nearly what is allowed: sooner", "es änderte sich fast um das Erlaubte: früher"],
  steady: ["it stood still twice: later", "es blieb zweimal ruhig: später"],
  trend: ["the trend uses the allowed change up by then", "bis dahin braucht der Verlauf das Erlaubte auf"],
  unchanged: ["as before", "wie bisher"],
});
