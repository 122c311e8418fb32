/** What rounds and docking refuse, in German, by key. */
export const roundErrors: Readonly<Record<string, string>> = {
  noRound: "Diesen Rundgang gibt es in dieser Datei nicht.",
  roundEnded: "Dieser Rundgang ist beendet oder abgesagt. Einen neuen machen. Nichts wurde abgelegt.",
  roundChanged:
    "Der Rundgang wurde inzwischen geändert, auf einer anderen Seite oder am Messplatz. Gezeigt wird er, wie er jetzt steht: noch einmal ansehen, dann weiter. Nichts wurde geändert.",
  otherRound: "Inzwischen läuft ein anderer Rundgang. Bitte ansehen, was jetzt gezeigt wird.",
  noStopOfRound: "Diese Spindel ist keine Station des Rundgangs.",
  seriesInWork: "Gemessenes ist noch nicht abgelegt. Ablegen oder neu beginnen, dann weiter mit dem Rundgang.",
  stopRetired:
    "Eine Spindel ist außer Gebrauch. Aus dem Rundgang nehmen, ihre Werte auslassen oder sie wieder in Gebrauch nehmen. Nichts wurde abgelegt.",
  stopTwice: "Eine Spindel steht zweimal im Rundgang.",
  noDocking: "Diese Auslesung ist nicht mehr offen. Speicher oder Datei noch einmal lesen; verloren ist nichts.",
  noFormat:
    "Noch gibt es keine Leseart, die sich aufheben ließe, oder es gibt sie nicht mehr. Zuerst die Fragen beantworten.",
  noDumpFormat: "Diese Leseart gibt es nicht mehr.",
  takesNotWhole:
    "Jeder Wert gehört genau einmal abgelegt oder ausgelassen. Bitte ansehen, was übrig ist, und noch einmal ablegen.",
  takeWithoutForce: "Ein Wert ohne Kraft lässt sich nicht ablegen. Bitte auslassen.",
  spindleTwice: "Eine Spindel hat zwei Gruppen von Werten. Zusammenlegen oder eine auslassen.",
  dockedMeanwhile:
    "Werte dieses Speichers wurden inzwischen auf einer anderen Seite abgelegt. Noch einmal ansehen: Gezeigt wird nur, was neu ist. Nichts wurde doppelt abgelegt.",
  dockingBlocked: "So darf eine der Spindeln nicht abgelegt werden: siehe ihre Warnung. Nichts wurde abgelegt.",
  reasonWanted: "Eine Warnung braucht einen Grund, bevor etwas abgelegt wird.",
  memorySilent:
    "Das Messgerät hat nichts gesendet. Auf Senden des Speichers stellen oder seine Sendetaste drücken, solange hier gewartet wird.",
  noLabels: "Nichts ist in Gebrauch, wofür ein Etikett zu drucken wäre.",
  demoOnly: "Das simulierte Messgerät geht nur in der Demo auf Rundgang. Zuerst die Demo öffnen.",
  noDemoRound: "In der Demo sind zu wenige Spindeln für einen Rundgang in Gebrauch.",
  jobStopped: "Angehalten. Nichts wurde geändert.",
  calendarOrder: "Bei einer Schließung liegt der letzte Tag vor dem ersten.",
};
