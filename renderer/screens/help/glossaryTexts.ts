type Pair = readonly [english: string, german: string];
type Entry = { readonly term: Pair; readonly meaning: Pair; readonly source?: string };

/** Entry numbers are those of JCGM 200:2012 (VIM) and JCGM 100:2008 (GUM), from memory; the page says so. */
export const glossary: readonly Entry[] = [
  {
    term: ["measurand", "Messgröße"],
    meaning: [
      "What one means to measure: here the force that draws the holder into the taper, settled, with this adapter.",
      "Was gemessen werden soll: hier die Kraft, die den Halter in den Kegel zieht, eingeschwungen, mit diesem Adapter.",
    ],
    source: "VIM 2.3",
  },
  {
    term: ["measurement error", "Messabweichung"],
    meaning: [
      "Value found less the reference value. Known errors are corrected; what stays unknown goes into the uncertainty.",
      "Gefundener Wert minus Referenzwert. Bekanntes wird berichtigt; Unbekanntes geht in die Unsicherheit.",
    ],
    source: "VIM 2.16",
  },
  {
    term: ["repeatability", "Wiederholpräzision"],
    meaning: [
      "How closely clampings agree when nothing is changed between them and they follow at once.",
      "Wie nahe Spannvorgänge beieinander liegen, wenn dazwischen nichts geändert wird und sie gleich folgen.",
    ],
    source: "VIM 2.21",
  },
  {
    term: ["reproducibility", "Vergleichpräzision"],
    meaning: [
      "How closely results agree across other places, people or gauges.",
      "Wie nahe Ergebnisse über andere Orte, Leute oder Messgeräte beieinander liegen.",
    ],
    source: "VIM 2.25",
  },
  {
    term: ["measurement uncertainty", "Messunsicherheit"],
    meaning: [
      "A figure, never negative, for how far the value could reasonably be elsewhere, given what is known.",
      "Eine Zahl, nie negativ, dafür, wie weit der Wert nach allem Wissen vernünftigerweise woanders liegen könnte.",
    ],
    source: "VIM 2.26 · GUM 2.2.3",
  },
  {
    term: ["Type A evaluation", "Ermittlungsmethode A"],
    meaning: [
      "A contribution found from the scatter of one's own readings.",
      "Ein Beitrag, der aus der Streuung eigener Messwerte kommt.",
    ],
    source: "VIM 2.28 · GUM 2.3.2",
  },
  {
    term: ["Type B evaluation", "Ermittlungsmethode B"],
    meaning: [
      "A contribution from other knowledge: a certificate, a resolution, experience.",
      "Ein Beitrag aus anderem Wissen: ein Schein, eine Auflösung, Erfahrung.",
    ],
    source: "VIM 2.29 · GUM 2.3.3",
  },
  {
    term: ["standard uncertainty u", "Standardunsicherheit u"],
    meaning: ["Uncertainty stated as a standard deviation.", "Unsicherheit, als Standardabweichung angegeben."],
    source: "VIM 2.30 · GUM 2.3.1",
  },
  {
    term: ["combined standard uncertainty", "kombinierte Standardunsicherheit"],
    meaning: [
      "All contributions together; independent ones add as squares.",
      "Alle Beiträge zusammen; unabhängige addieren sich als Quadrate.",
    ],
    source: "VIM 2.31 · GUM 2.3.4",
  },
  {
    term: ["uncertainty budget", "Unsicherheitsbudget"],
    meaning: [
      "The list of contributions with their sizes and how they were found.",
      "Die Liste der Beiträge mit ihrer Größe und wie sie gefunden wurden.",
    ],
    source: "VIM 2.33",
  },
  {
    term: ["expanded uncertainty U", "erweiterte Messunsicherheit U"],
    meaning: [
      "u times a factor, so that the interval value ± U most probably holds what was to be measured.",
      "u mal einem Faktor, sodass das Intervall Wert ± U das Gesuchte höchstwahrscheinlich enthält.",
    ],
    source: "VIM 2.35 · GUM 2.3.5",
  },
  {
    term: ["coverage probability", "Überdeckungswahrscheinlichkeit"],
    meaning: [
      "How probably the interval holds it; here 95 % unless said otherwise.",
      "Wie wahrscheinlich das Intervall es enthält; hier 95 %, wenn nichts anderes dasteht.",
    ],
    source: "VIM 2.37",
  },
  {
    term: ["coverage factor k", "Erweiterungsfaktor k"],
    meaning: ["The factor between u and U, near 2.", "Der Faktor zwischen u und U, nahe 2."],
    source: "VIM 2.38 · GUM 2.3.6",
  },
  {
    term: ["calibration", "Kalibrierung"],
    meaning: [
      "Finding what the gauge shows at known forces, with uncertainties, and from that how to turn its figure into a force.",
      "Feststellen, was das Messgerät bei bekannten Kräften zeigt, mit Unsicherheiten, und daraus, wie aus seiner Zahl eine Kraft wird.",
    ],
    source: "VIM 2.39",
  },
  {
    term: ["traceability", "Rückführbarkeit"],
    meaning: [
      "An unbroken, written chain of calibrations up to the reference, each with its uncertainty.",
      "Eine lückenlose, dokumentierte Kette von Kalibrierungen bis zur Referenz, jede mit ihrer Unsicherheit.",
    ],
    source: "VIM 2.41",
  },
  {
    term: ["adjustment", "Justierung"],
    meaning: [
      "Setting the gauge so that it shows right. No calibration: one belongs before it and one after.",
      "Das Messgerät so stellen, dass es richtig zeigt. Keine Kalibrierung: davor und danach gehört je eine.",
    ],
    source: "VIM 3.11",
  },
  {
    term: ["indication", "Anzeige"],
    meaning: [
      "The figure the gauge gives, before zero and correction.",
      "Die Zahl des Messgeräts, vor Nullpunkt und Korrektur.",
    ],
    source: "VIM 4.1",
  },
  {
    term: ["resolution", "Auflösung"],
    meaning: [
      "The smallest change that can be told from the figure shown.",
      "Die kleinste Änderung, die sich an der Anzeige erkennen lässt.",
    ],
    source: "VIM 4.14",
  },
  {
    term: ["drift", "Messgerätedrift"],
    meaning: [
      "Slow change of what the gauge shows, though the force is the same.",
      "Langsame Änderung der Anzeige, obwohl die Kraft dieselbe ist.",
    ],
    source: "VIM 4.21",
  },
  {
    term: ["maximum permissible error", "Fehlergrenze"],
    meaning: [
      "The greatest error a specification lets a gauge have.",
      "Die größte Abweichung, die eine Vorschrift einem Messgerät erlaubt.",
    ],
    source: "VIM 4.26",
  },
  {
    term: ["zero error", "Nullpunktabweichung"],
    meaning: ["What the gauge shows with nothing on it.", "Was das Messgerät ohne Last zeigt."],
    source: "VIM 4.28",
  },
  {
    term: ["calibration curve", "Kalibrierkurve"],
    meaning: [
      "How indication goes with force, found by calibration.",
      "Wie die Anzeige mit der Kraft geht, aus der Kalibrierung.",
    ],
    source: "VIM 4.31",
  },
  {
    term: ["measurement standard", "Normal"],
    meaning: [
      "What the gauge is compared with: dead weights or a better transducer.",
      "Womit das Messgerät verglichen wird: Gewichte oder ein besserer Aufnehmer.",
    ],
    source: "VIM 5.1",
  },
  {
    term: ["settled force", "Haltekraft"],
    meaning: [
      "The force one to three seconds after the snap; what verdicts are about.",
      "Die Kraft eine bis drei Sekunden nach dem Zuschnappen; um sie geht es bei den Urteilen.",
    ],
  },
  {
    term: ["baseline", "Ausgangswert"],
    meaning: [
      "The check the others are compared with: at commissioning or after service.",
      "Die Prüfung, mit der die anderen verglichen werden: bei der Inbetriebnahme oder nach der Wartung.",
    ],
  },
  {
    term: ["guard band", "Schutzband"],
    meaning: [
      "A strip at a limit, as wide as the rule makes it from the uncertainty; inside it a value does not simply pass.",
      "Ein Streifen an einer Grenze, so breit, wie ihn die Regel aus der Unsicherheit macht; darin gilt ein Wert nicht einfach als gut.",
    ],
  },
];
