import { inBoth } from "../../../app/words/inBoth.ts";

/** Everything that is said about people: who is on shift, whose act it is, PINs, names. */
export const peopleTexts = inBoth({
  whoTitle: ["Who is on shift?", "Wer hat Schicht?"],
  whoWhy: ["This act stays on record with a name.", "Diese Handlung bleibt mit einem Namen verzeichnet."],
  roleTitle: ["Whose act is this?", "Wer darf das?"],
  roleWhy: [
    (act: string, roles: string) => `${act} is for: ${roles}. Let one of them do it here; the shift stays as it is.`,
    (act: string, roles: string) =>
      `${act}: Das dürfen ${roles}. Jemand davon kann es hier tun; die Schicht bleibt, wie sie ist.`,
  ],
  nobodyMay: [
    "Nobody on the list may do this. A keeper gives roles in Setup.",
    "Niemand auf der Liste darf das. Rollen vergibt die Datenverantwortung unter Einrichten.",
  ],
  "act.accept": ["Filing a check", "Prüfung ablegen"],
  "act.void": ["Taking a filed check out of the count", "Abgelegte Prüfung für ungültig erklären"],
  "act.limits": ["Changing what checks are judged by", "Ändern, wonach beurteilt wird"],
  "act.releaseStop": ["Releasing a stop", "Stopp aufheben"],
  "act.proof": [
    "Filing a proof, or changing what readings are corrected by",
    "Messgeräteprüfung ablegen oder Korrekturen ändern",
  ],
  "act.restore": ["Putting other records in place", "Andere Einträge einsetzen"],
  "act.people": ["Changing people, roles and PINs", "Personen, Rollen und PINs ändern"],

  pinTitle: [(name: string) => `PIN of ${name}`, (name: string) => `PIN von ${name}`],
  pin: ["PIN", "PIN"],
  pinEnter: ["Enter", "Eingeben"],
  pinDelete: ["Delete the last digit", "Letzte Ziffer löschen"],
  pinShort: ["Four to eight digits.", "Vier bis acht Ziffern."],
  pinDiffers: ["The two are not the same. Begin again.", "Die beiden sind nicht gleich. Bitte von vorn."],
  pinOld: ["PIN until now", "Bisherige PIN"],
  pinNew: ["New PIN", "Neue PIN"],
  pinAgain: ["New PIN once more", "Neue PIN noch einmal"],
  pinForgotten: ["Forgotten: a keeper resets it", "Vergessen: Die Datenverantwortung setzt sie zurück"],
  pinNext: ["Next", "Weiter"],
  pinTake: ["No PIN any more", "Keine PIN mehr"],
  pinSet: ["Set a PIN", "PIN setzen"],
  pinChange: ["Change the PIN", "PIN ändern"],
  pinDone: ["The PIN is set.", "Die PIN ist gesetzt."],
  pinGone: ["The PIN is gone.", "Die PIN ist weg."],
  hasPin: ["with PIN", "mit PIN"],

  "role.technician": [
    "Measures and files; takes back what was just filed.",
    "Misst und legt ab; nimmt eben Abgelegtes zurück.",
  ],
  "role.planner": [
    "Also voids checks, sets limits and baselines, releases stops.",
    "Erklärt auch Prüfungen für ungültig, setzt Grenzen und Bezugswerte, hebt Stopps auf.",
  ],
  "role.lab": [
    "Also voids checks, files proofs, sets scales and curves.",
    "Erklärt auch Prüfungen für ungültig, legt Messgeräteprüfungen ab, setzt Faktoren und Kurven.",
  ],
  "role.keeper": [
    "May do everything, looks after people and PINs, restores copies.",
    "Darf alles, betreut Personen und PINs, stellt Kopien wieder her.",
  ],
  rolesOff: [
    "Everybody may do everything: nobody is keeper of the records. From the first keeper on, roles count and a PIN can be set.",
    "Alle dürfen alles: Niemand hat die Datenverantwortung. Sobald jemand sie hat, gelten die Rollen, und eine PIN kann gesetzt werden.",
  ],
  rolesOn: [
    "Roles count. Each act that needs one is filed with its person.",
    "Die Rollen gelten. Jede Handlung, die eine braucht, wird mit der Person verzeichnet.",
  ],
  honest: [
    "This guards against slips. It does not lock the records against whoever owns this PC.",
    "Das schützt vor Versehen. Es verschließt die Einträge nicht vor dem, dem dieser PC gehört.",
  ],
  firstKeeper: [
    "With the first keeper roles begin to count: each act needs a name from the tag on Measure, and only a keeper changes people. The last keeper cannot be removed.",
    "Mit der ersten Datenverantwortung gelten die Rollen: Jede Handlung braucht einen Namen aus dem Etikett unter Messen, und nur wer die Verantwortung hat, ändert Personen. Der oder die Letzte lässt sich nicht entfernen.",
  ],
  initials: ["Initials", "Kürzel"],
  initialsHint: ["Shown in reports. Empty: made from the name.", "Steht in Berichten. Leer: aus dem Namen gebildet."],
  byInitials: ["Show people by their initials on this PC", "Personen auf diesem PC mit ihrem Kürzel zeigen"],
  noName: ["name erased", "Name gelöscht"],
  hide: ["Take the name out …", "Namen herausnehmen …"],
  hideTitle: [(name: string) => `Take out the name ${name}?`, (name: string) => `Den Namen ${name} herausnehmen?`],
  hideWhy: [
    "The name goes out of the data file for good. What was filed stays, under the number. Copies made before still hold the name until their time is over.",
    "Der Name verschwindet endgültig aus der Datei. Abgelegtes bleibt, unter der Nummer. Früher gemachte Kopien enthalten den Namen, bis ihre Zeit um ist.",
  ],
  toInitials: [
    (initials: string) => `Leave ${initials} in its place`,
    (initials: string) => `${initials} stehen lassen`,
  ],
  erase: ["Leave nothing", "Nichts stehen lassen"],
  shiftEnd: ["End the shift", "Schicht beenden"],
});
