import { inBoth } from "../../../words/inBoth.ts";

export const connectTexts = inBoth({
  title: ["Connect a gauge", "Ein Messgerät verbinden"],
  lead: [
    "Any force gauge that sends readable lines over a serial port, USB or the network will do. How it writes them is found by itself.",
    "Jeder Kraftmesser, der lesbare Zeilen über serielle Schnittstelle, USB oder Netz sendet, ist recht. Wie er sie schreibt, wird von selbst gefunden.",
  ],
  step1: ["Plug the gauge in and switch it on.", "Das Messgerät einstecken und einschalten."],
  step2: [
    "On Measure or under Setup, say which gauge it is, then press its port. A gauge that was here before is known again.",
    "Beim Messen oder unter Einrichten sagen, welches Messgerät es ist, dann seinen Anschluss drücken. Ein bekanntes wird wiedererkannt.",
  ],
  step3: [
    "Nothing readable? Find by listening goes through the usual speeds while the gauge sends; a few seconds are enough.",
    "Nichts Lesbares? Durch Abhören finden geht die üblichen Geschwindigkeiten durch, während das Messgerät sendet; wenige Sekunden genügen.",
  ],
  step4: [
    "Answer what a line cannot tell, such as the unit of a bare number. The answer is kept with the gauge.",
    "Beantworten, was eine Zeile nicht verrät, etwa die Einheit einer nackten Zahl. Die Antwort bleibt beim Messgerät.",
  ],
  picture: [
    "Choosing the port; below it the lines as sent.",
    "Den Anschluss wählen; darunter die Zeilen, wie gesendet.",
  ],
  note1: [
    "On Linux a port that may not be opened belongs to a group, mostly dialout: add your user to it and log in anew. On Windows another program may hold it.",
    "Unter Linux gehört ein verweigerter Anschluss einer Gruppe, meist dialout: den Benutzer aufnehmen und neu anmelden. Unter Windows hält ihn vielleicht ein anderes Programm.",
  ],
  note2: [
    "A unit of torque (N·m, lb·ft) is refused: it cannot be a clamping force. No gauge at hand: type the value in, with its unit.",
    "Eine Einheit des Drehmoments (N·m, lb·ft) wird abgelehnt: Sie kann keine Einzugskraft sein. Kein Messgerät zur Hand: den Wert mit Einheit eintippen.",
  ],
});
