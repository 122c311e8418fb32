import { inBoth } from "../../words/inBoth.ts";

/** What stands against an import, less the place. `about` is the cell, the other row or the field. */
export const problemTexts = inBoth({
  unreadable: ["this is no table with a head", "das ist keine Tabelle mit Kopfzeile"],
  cells: [
    "more or fewer cells than the head; quote cells that hold the separator",
    "mehr oder weniger Zellen als der Kopf; Zellen mit dem Trennzeichen in Anführungszeichen setzen",
  ],
  fieldTwice: [
    (field: string) => `two columns are taken for “${field}”: leave one out`,
    (field: string) => `zwei Spalten gelten als „${field}“: eine weglassen`,
  ],
  fieldMissing: [
    (field: string) => `no column is taken for “${field}”, and it is needed`,
    (field: string) => `keine Spalte gilt als „${field}“, und sie wird gebraucht`,
  ],
  valueBesideTakes: [
    (column: string) =>
      `“${column}” is taken for the force, and other columns for its takes, which give it: leave out the one or the others`,
    (column: string) =>
      `„${column}“ gilt als die Kraft, andere Spalten als ihre Einzelwerte, aus denen sie folgt: das eine oder das andere weglassen`,
  ],
  unitWanted: [
    (about: string) => `no unit of force for “${about}”: say which one it is`,
    (about: string) => `keine Krafteinheit für „${about}“: bitte angeben`,
  ],
  torque: [
    (about: string) => `“${about}” is a torque and no force: it cannot be read as one`,
    (about: string) => `„${about}“ ist ein Drehmoment und keine Kraft: als Kraft wird es nicht gelesen`,
  ],
  mass: [
    (about: string) => `“${about}” is a mass; write kgf or lbf where a force is meant`,
    (about: string) => `„${about}“ ist eine Masse; kgf oder lbf schreiben, wenn eine Kraft gemeint ist`,
  ],
  noForce: [(about: string) => `“${about}” is no force`, (about: string) => `„${about}“ ist keine Kraft`],
  noNumber: [
    (about: string) => `“${about}” is not the number that belongs here`,
    (about: string) => `„${about}“ ist nicht die Zahl, die hierher gehört`,
  ],
  noDate: [
    (about: string) => `“${about}” is no date here; write 2026-04-03 or 03.04.2026`,
    (about: string) => `„${about}“ ist hier kein Datum; 03.04.2026 oder 2026-04-03 schreiben`,
  ],
  mixedMarks: [
    (about: string) => `“${about}” has another decimal mark than the rows before: use one in the whole file`,
    (about: string) =>
      `„${about}“ hat ein anderes Dezimalzeichen als die Zeilen davor: eines für die ganze Datei benutzen`,
  ],
  needed: [(field: string) => `“${field}” is needed`, (field: string) => `„${field}“ wird gebraucht`],
  twinInFile: [
    (row: string) => `this stands in row ${row} already; the two could not be told apart`,
    (row: string) => `das steht schon in Zeile ${row}; die beiden ließen sich nicht unterscheiden`,
  ],
  twinInRegister: [
    (about: string) => `“${about}” is in the register already`,
    (about: string) => `„${about}“ ist schon verzeichnet`,
  ],
  limits: [
    "the limits must rise from minimum over warning and nominal to maximum",
    "die Grenzen müssen von der Mindestkraft über Warngrenze und Sollkraft zur Höchstkraft steigen",
  ],
  range: [
    (field: string) =>
      `“${field}” is outside what can be: forces, scales and uncertainties are above zero, names and notes end somewhere`,
    (field: string) =>
      `„${field}“ liegt außerhalb des Möglichen: Kräfte, Faktoren und Unsicherheiten sind über null, Namen und Bemerkungen enden irgendwo`,
  ],
  sheetWanted: [
    (sheets: string) => `several sheets hold something (${sheets}): choose one`,
    (sheets: string) => `mehrere Blätter enthalten etwas (${sheets}): bitte eines wählen`,
  ],
  hiddenSheets: [
    (n: string) => `hidden sheets, which are not read: ${n}`,
    (n: string) => `ausgeblendete Blätter, die nicht gelesen werden: ${n}`,
  ],
  merged: [
    "joined cells: what stands in them is read for each of the rows",
    "verbundene Zellen: ihr Inhalt wird für jede der Zeilen gelesen",
  ],
  mergedValue: [
    "joined cells: one value cannot stand for several rows, write it into each row it belongs to",
    "verbundene Zellen: ein Wert kann nicht für mehrere Zeilen stehen, bitte in jede Zeile schreiben, zu der er gehört",
  ],
  dateOrderWanted: [
    (about: string) => `“${about}” can be read in two ways: say whether the day or the month comes first`,
    (about: string) => `„${about}“ lässt sich auf zwei Arten lesen: bitte angeben, ob Tag oder Monat vorn steht`,
  ],
  future: [(about: string) => `“${about}” lies in the future`, (about: string) => `„${about}“ liegt in der Zukunft`],
  tooOld: [(about: string) => `“${about}” lies before 1950`, (about: string) => `„${about}“ liegt vor 1950`],
  spindleUnknown: [
    (about: string) => `“${about}” is no spindle known here: say above what it is`,
    (about: string) => `„${about}“ ist keine hier bekannte Spindel: oben angeben, was sie ist`,
  ],
  toolUnknown: [
    (about: string) => `not known here, and left out unless you say above what they are: ${about}`,
    (about: string) => `hier nicht bekannt und weggelassen, wenn oben nichts anderes angegeben wird: ${about}`,
  ],
  sameFile: [
    (day: string) => `this very file was imported on ${day}`,
    (day: string) => `genau diese Datei wurde am ${day} importiert`,
  ],
  alreadyThere: [
    (n: string) => `checks that are in the records already and are passed over: ${n}`,
    (n: string) => `Prüfungen, die schon verzeichnet sind und übergangen werden: ${n}`,
  ],
  baselineMoves: [
    (n: string) =>
      `spindles whose history begins earlier now, with another check to compare with: ${n}. Choose another on the spindle’s page where that is wrong`,
    (n: string) =>
      `Spindeln, deren Verlauf nun früher beginnt, mit einer anderen Prüfung als Vergleich: ${n}. Wo das falsch ist, auf der Seite der Spindel eine andere wählen`,
  ],
  farOff: [
    (about: string) => `“${about}” is far from what this spindle is made for: is the unit right?`,
    (about: string) => `„${about}“ liegt weit weg von dem, wofür diese Spindel gebaut ist: stimmt die Einheit?`,
  ],
  taperUnknown: [
    (about: string) => `“${about}” is no taper of a standard known here; it is kept as it stands`,
    (about: string) => `„${about}“ ist kein hier bekannter Normkegel; er wird übernommen, wie er dasteht`,
  ],
});
