import type { Failure } from "../../app/contract/result.ts";
import type { Speech } from "./Speech.ts";

/** A failure in the reader's language. The core's own words are English; a key without words here leaves them as they are. */
export function errorWords(failure: Failure, speech: Speech): string {
  if (speech.language === "en" || failure.key === undefined) return failure.message;
  return german[failure.key] ?? failure.message;
}

const german: Readonly<Record<string, string>> = {
  pageRefused: "Das Programm kennt diese Seite nicht. Bitte eine Seite aus dem Programm heraus öffnen.",
  callFailed: "Das Programm hat nicht geantwortet wie erwartet. Bitte noch einmal versuchen.",
  coreAway: "Das Programm ist nicht zu erreichen. Abgelegtes ist sicher; Eingetipptes bleibt hier stehen.",
  alreadyVoid: "Diese Prüfung zählt schon nicht mehr.",
  noCheck: "Diese Prüfung gibt es in dieser Datei nicht.",
  noSpindle: "Diese Spindel gibt es in dieser Datei nicht.",
  noWaveform: "Von diesem Spannvorgang wurden keine Messwerte aufgehoben; es gibt nur seine Zahlen.",
  waveformDamaged:
    "Die Messwerte dieses Spannvorgangs sind nicht die abgelegten. Die Zahlen der Prüfung gelten weiter.",
  undoOver: "Die Minute ist um. Die Prüfung kann auf der Seite der Spindel mit Grund für ungültig erklärt werden.",
  noStop: "An dieser Spindel steht kein Stopp.",
  stopNeedsCheck: "Ein Stopp wird mit einer späteren Prüfung aufgehoben. Diese Spindel zuerst noch einmal messen.",
  stopStands: "Auch die neueste Prüfung sagt Stopp. Die Spindel darf nicht benutzt werden.",
  nothingToRetake: "Es gibt keinen Spannvorgang zu wiederholen. Zuerst spannen.",
  overrideRefused: "Das lässt sich nicht übergehen: Es würde jemanden oder das Messgerät gefährden.",
  "force.bare": "Welche Einheit? Bitte hinter die Zahl schreiben, etwa 17,92 kN.",
  "force.torque": "Das ist ein Drehmoment und keine Kraft; als Kraft wird es nicht gelesen.",
  "force.mass": "Das ist eine Masse. Bitte kgf oder lbf schreiben, wenn eine Kraft gemeint ist.",
  "force.unreadable": "Das ist keine Zahl mit einer Krafteinheit wie 30 kN.",
  "force.notPositive": "Eine Einzugskraft liegt über null.",
  "zero.noGauge": "Es wird kein Messgerät gelesen. Zuerst verbinden.",
  "zero.noReading": "Noch ist kein Messwert gekommen.",
  "zero.held": "Dieses Messgerät zeigt seine gehaltene Spitze: bitte am Gerät selbst löschen.",
  "zero.loaded":
    "Das Messgerät ist belastet oder die Kraft bewegt sich. Lösen, eine Sekunde ruhig liegen lassen, noch einmal drücken.",
  "zero.moving": "Die Anzeige ist noch keine Sekunde ruhig. Ruhig liegen lassen und noch einmal drücken.",
  clockBehind:
    "Die Uhr dieses Rechners steht vor dem letzten Eintrag. Uhr prüfen; wer trotzdem ablegt, vermerkt den Zweifel.",
  tagChanged: "Das Etikett wurde inzwischen auf einer anderen Seite geändert. Bitte ansehen und noch einmal ablegen.",
  noJob: "Diese Arbeit ist schon beendet.",
  notSimulated: "Das geht nur mit dem simulierten Messgerät.",
  nothingToLearn: "Noch ist nichts gekommen, woraus sich lernen ließe.",
  readOnly: "Im Augenblick kann nichts geschrieben werden.",
  seriesGone:
    "Diese Messreihe wurde inzwischen auf einer anderen Seite abgelegt oder verworfen. Bitte ansehen, was jetzt gezeigt wird.",
  "store.full":
    "Die Platte mit der Datei ist voll. Nichts davon wurde abgelegt; früher Abgelegtes ist sicher. Platz schaffen und noch einmal ablegen.",
  "store.busy":
    "Ein langer Vorgang (Import oder Wiederherstellung) schreibt gerade. Nichts wurde abgelegt; danach noch einmal ablegen.",
  "store.readOnly":
    "Die Datei, ihr Ordner oder ihre Platte ist schreibgeschützt. Nichts davon wurde abgelegt. Diesem Benutzer das Schreiben dort erlauben.",
  "store.locked": "Ein anderes Holdfast hat diese Datei offen.",
  "store.damaged":
    "Die Platte hat beschädigte Daten geliefert. Nichts davon wurde abgelegt. Platte prüfen und die Einträge prüfen lassen.",
  "store.notFound":
    "Die Datei oder ihr Ordner ist nicht mehr da. Nichts davon wurde abgelegt. Wurde ein Laufwerk abgezogen?",
  "store.newer": "Diese Datei stammt von einem neueren Holdfast.",
  "link.portGone": "Der Anschluss ist verschwunden. Sitzt das Kabel, ist das Messgerät an?",
  "link.portUnknown": "Diesen Anschluss gibt es an diesem Rechner nicht.",
  "link.portBusy": "Ein anderes Programm hat diesen Anschluss offen. Dort schließen und noch einmal verbinden.",
  "link.portForbidden": "Dieser Benutzer darf den Anschluss nicht öffnen.",
  "link.driverMissing": "Der Treiber für serielle Anschlüsse lässt sich hier nicht laden.",
  "link.settingRefused": "Das Gerät nimmt diese Baudrate, Datenbits oder Parität nicht an.",
  "link.hostUnknown": "Dieser Name führt zu keinem Gerät im Netz.",
  "link.refused": "Das Gerät im Netz antwortet, nimmt die Verbindung aber nicht an.",
  "link.timeout": "Nichts hat rechtzeitig geantwortet.",
  "link.noAnswer": "Das Messgerät hat auf die Anfrage nicht geantwortet.",
  "link.fileUnreadable": "Diese Datei lässt sich nicht lesen.",
};
