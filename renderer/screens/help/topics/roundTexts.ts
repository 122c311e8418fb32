import { inBoth } from "../../../words/inBoth.ts";

export const roundTexts = inBoth({
  title: ["Walk and dock a round", "Rundgang gehen und auslesen"],
  lead: [
    "What is due, grouped by adapter so that it changes as seldom as can be; afterwards every value goes to its spindle in one act.",
    "Was fällig ist, nach Adapter geordnet, damit er möglichst selten wechselt; danach geht jeder Wert in einem Zug zu seiner Spindel.",
  ],
  caution: [
    "Each machine is locked out before a hand goes to the spindle nose; hold the gauge as a tool is held.",
    "Jede Maschine wird gesichert, bevor eine Hand an die Spindelnase kommt; das Messgerät halten wie ein Werkzeug.",
  ],
  step1: [
    "Rounds: tick what is to be visited and make a round of it. Print the sheet; its labels can be scanned.",
    "Rundgänge: ankreuzen, was besucht wird, und einen Rundgang daraus machen. Das Blatt drucken; seine Etiketten lassen sich scannen.",
  ],
  step2: [
    "With the PC along: let the round lead Measure from stop to stop. Without: walk the sheet and let the gauge's memory keep the values.",
    "Mit dem PC dabei: den Rundgang das Messen von Halt zu Halt führen lassen. Ohne: das Blatt abgehen und den Speicher des Messgeräts die Werte behalten lassen.",
  ],
  step3: [
    "Back at the bench, open Dock, choose the round and the gauge, and read its memory, a file of it, or type from the sheet.",
    "Zurück an der Werkbank Auslesen öffnen, Rundgang und Messgerät wählen und den Speicher, eine Datei davon oder das Blatt einlesen.",
  ],
  step4: [
    "Look at the proposals. What is sure is placed; what is not is asked: two spindles that may be swapped, a value nobody planned.",
    "Die Vorschläge ansehen. Sicheres ist zugeordnet; Unsicheres wird gefragt: zwei vielleicht vertauschte Spindeln, ein Wert, den niemand geplant hat.",
  ],
  step5: [
    "Accept once. Every value is judged and filed as if measured live; the docking keeps every raw line.",
    "Einmal annehmen. Jeder Wert wird beurteilt und abgelegt wie ein gemessener; jede rohe Zeile bleibt erhalten.",
  ],
  picture: ["What is due, and the round made of it.", "Was fällig ist, und der Rundgang daraus."],
  note1: [
    "The gauge's clock is often wrong: it orders the values but is never trusted for the date without being asked about.",
    "Die Uhr eines Messgeräts geht oft falsch: Sie ordnet die Werte, doch das Datum glaubt ihr niemand ungefragt.",
  ],
});
