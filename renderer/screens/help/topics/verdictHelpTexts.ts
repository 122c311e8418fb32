import { inBoth } from "../../../words/inBoth.ts";

export const verdictHelpTexts = inBoth({
  title: ["What the verdicts mean", "Was die Urteile bedeuten"],
  lead: [
    "Five words, each with a mark that shows how deep the taper sits. The first rule that applies decides.",
    "Fünf Wörter, jedes mit einem Zeichen, das zeigt, wie tief der Kegel sitzt. Die erste Regel, die zutrifft, entscheidet.",
  ],
  caution: [
    "A spindle on stop is not used until someone entitled has decided; the builder's manual and local rules come first.",
    "Eine Spindel auf Stopp wird nicht benutzt, bis jemand Befugtes entschieden hat; Handbuch und örtliche Regeln gehen vor.",
  ],
  step1: [
    "Stop: the force does not meet the builder's minimum, by the decision rule of the works. It stays until someone entitled releases it, by name, with a reason and a new check.",
    "Stopp: Die Kraft erfüllt nach der Entscheidungsregel des Werks die Mindestkraft des Herstellers nicht. Er bleibt, bis jemand Befugtes ihn mit Namen, Grund und neuer Prüfung aufhebt.",
  ],
  step2: [
    "Act: too much force, or a fall from the baseline or the last check at or beyond the limit for acting (20 % unless set otherwise; common practice). Plan service now.",
    "Handeln: zu viel Kraft, oder ein Abfall vom Ausgangswert oder von der vorigen Prüfung an oder über der Handlungsgrenze (20 %, wenn nicht anders gesetzt; verbreitete Praxis). Jetzt Wartung planen.",
  ],
  step3: [
    "Cannot tell: the value is too near a limit for its uncertainty, or there is nothing to judge against. The screen says what would settle it.",
    "Unklar: Der Wert liegt für seine Unsicherheit zu nahe an einer Grenze, oder es gibt nichts, woran zu messen wäre. Der Bildschirm sagt, was es klären würde.",
  ],
  step4: [
    "Watch: below the builder's warning, or a fall or rise at or beyond the caution limit (10 % unless set otherwise). Measure again sooner.",
    "Beobachten: unter der Warngrenze des Herstellers, oder ein Abfall oder Anstieg an oder über der Vorsichtsgrenze (10 %, wenn nicht anders gesetzt). Früher wieder messen.",
  ],
  step5: [
    "Good: none of these, and there is a limit or a baseline that says so.",
    "Gut: nichts davon, und es gibt eine Grenze oder einen Ausgangswert, die das sagen.",
  ],
  picture: ["The list in the order in which to act.", "Die Liste in der Reihenfolge des Handelns."],
  note1: [
    "What weakens a verdict stands beside it: another adapter or gauge than last time, a proof past due, an unsteady hold. A filed verdict is never changed; what today's limits would say is shown beside it.",
    "Was ein Urteil schwächt, steht daneben: anderer Adapter oder anderes Messgerät als zuletzt, überfällige Prüfung des Messgeräts, unruhiges Halten. Ein abgelegtes Urteil wird nie geändert; was die heutigen Grenzen sagen würden, steht daneben.",
  ],
});
