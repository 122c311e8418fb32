import { inBoth } from "./inBoth.ts";

/** The four methods, each with the one sentence that helps to choose it. */
export const methodTexts = inBoth({
  polynomial: ["Calibration curve", "Kalibrierkurve"],
  iso376: ["Classes after ISO 376", "Klassen nach ISO 376"],
  "astm-e74": ["Lower limit after ASTM E74", "Untere Grenze nach ASTM E74"],
  working: ["Working check", "Arbeitsprüfung"],
  "about.polynomial": [
    "A curve with its uncertainty; every check is corrected with it. No class.",
    "Eine Kurve mit ihrer Unsicherheit; jede Prüfung wird damit berichtigt. Keine Klasse.",
  ],
  "about.iso376": [
    "Four series at three mounting positions, with falling loads and creep: relative errors and a class.",
    "Vier Reihen in drei Einbaulagen, mit fallenden Lasten und Kriechen: relative Abweichungen und eine Klasse.",
  ],
  "about.astm-e74": [
    "Three runs: a curve, its lower limit factor, and the forces from which class AA or A holds.",
    "Drei Läufe: eine Kurve, ihr Faktor der unteren Grenze und die Kräfte, ab denen Klasse AA oder A gilt.",
  ],
  "about.working": [
    "The errors at a few loads against what you allow, by a decision rule. The short one, for between.",
    "Die Abweichungen bei wenigen Lasten gegen das Erlaubte, nach einer Entscheidungsregel. Die kurze, für zwischendurch.",
  ],
});
