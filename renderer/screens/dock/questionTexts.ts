import { inBoth } from "../../words/inBoth.ts";

/** What is asked of a docking: of several readings, and of one alone. Two are always meant where one has no words of its own. */
export const questionTexts = inBoth({
  questions: [(open: number) => `Questions, ${open} open`, (open: number) => `Fragen, ${open} offen`],
  readings: [(list: string) => `Readings ${list}`, (list: string) => `Messwerte ${list}`],
  reading: [(number: string) => `Reading ${number}`, (number: string) => `Messwert ${number}`],
  andMore: [(n: number) => `and ${n} more`, (n: number) => `und ${n} weitere`],
  "q.torque": [
    "carry a unit of torque. A torque is no force.",
    "tragen eine Drehmomenteinheit. Ein Drehmoment ist keine Kraft.",
  ],
  "one.torque": [
    "carries a unit of torque. A torque is no force.",
    "trägt eine Drehmomenteinheit. Ein Drehmoment ist keine Kraft.",
  ],
  "q.overload": ["were overload: there is no figure.", "waren Überlast: Es gibt keine Zahl."],
  "one.overload": ["was overload: there is no figure.", "war Überlast: Es gibt keine Zahl."],
  "q.unreadable": ["hold no force that can be read.", "enthalten keine lesbare Kraft."],
  "one.unreadable": ["holds no force that can be read.", "enthält keine lesbare Kraft."],
  "q.noClamping": ["look as if nothing was clamped.", "sehen aus, als sei nichts gespannt gewesen."],
  "one.noClamping": ["looks as if nothing was clamped.", "sieht aus, als sei nichts gespannt gewesen."],
  "q.dateOutside": ["are dated outside this round.", "sind nicht vom Tag dieses Rundgangs."],
  "one.dateOutside": ["is dated outside this round.", "ist nicht vom Tag dieses Rundgangs."],
  "q.valueTwice": [
    "are the same figure within seconds: one clamping stored twice?",
    "sind dieselbe Zahl binnen Sekunden: ein Spannen zweimal gespeichert?",
  ],
  "q.unitFactor": [
    (factor: string) => `fit their spindles only when multiplied by ${factor}: the gauge stood on another unit?`,
    (factor: string) => `passen nur, wenn man sie mit ${factor} malnimmt: War eine andere Einheit eingestellt?`,
  ],
  "one.unitFactor": [
    (factor: string) => `fits its spindle only when multiplied by ${factor}: the gauge stood on another unit?`,
    (factor: string) => `passt nur, wenn man ihn mit ${factor} malnimmt: War eine andere Einheit eingestellt?`,
  ],
  "q.swapped": [
    "fit better the other way round: two spindles swapped?",
    "passen andersherum besser: zwei Spindeln vertauscht?",
  ],
  "q.fitsAnother": [
    "are far from what their spindles showed, and fit a neighbour.",
    "liegen weit von dem, was ihre Spindeln zeigten, und passen zu einer Nachbarin.",
  ],
  "one.fitsAnother": [
    "is far from what this spindle showed, and fits a neighbour.",
    "liegt weit von dem, was diese Spindel zeigte, und passt zu einer Nachbarin.",
  ],
  "q.maximumKept": [
    "repeat the figure of the spindle before: the maximum not cleared?",
    "wiederholen die Zahl der Spindel davor: Spitze nicht gelöscht?",
  ],
  "one.maximumKept": [
    "repeats the figure of the spindle before: the maximum not cleared?",
    "wiederholt die Zahl der Spindel davor: Spitze nicht gelöscht?",
  ],
  "q.alike": [
    "belong to spindles that their forces cannot tell apart; they are shown in the order of the round.",
    "gehören zu Spindeln, die ihre Kräfte nicht unterscheiden; gezeigt in der Folge des Rundgangs.",
  ],
  "one.alike": [
    "belongs to one of several spindles that their forces cannot tell apart; it is shown in the order of the round.",
    "gehört zu einer von mehreren Spindeln, die ihre Kräfte nicht unterscheiden; gezeigt in der Folge des Rundgangs.",
  ],
  "q.unsure": ["could as well belong elsewhere.", "könnten auch anderswohin gehören."],
  "one.unsure": ["could as well belong elsewhere.", "könnte auch anderswohin gehören."],
  "q.belongsNowhere": ["fit no spindle.", "passen zu keiner Spindel."],
  "one.belongsNowhere": ["fits no spindle.", "passt zu keiner Spindel."],
  "q.unknownLocation": [
    "carry a location that no spindle of the round has.",
    "tragen einen Ort, den keine Spindel des Rundgangs hat.",
  ],
  "one.unknownLocation": [
    "carries a location that no spindle of the round has.",
    "trägt einen Ort, den keine Spindel des Rundgangs hat.",
  ],
  "q.wrongLocation": [
    "carry another location than the spindle their force fits.",
    "tragen einen anderen Ort als die Spindel, zu der ihre Kraft passt.",
  ],
  "one.wrongLocation": [
    "carries another location than the spindle its force fits.",
    "trägt einen anderen Ort als die Spindel, zu der seine Kraft passt.",
  ],
  "q.clockPutBack": [
    "come after the gauge's clock was put back; earlier times are not used, only the order.",
    "kommen, nachdem die Uhr zurückgestellt wurde; frühere Zeiten zählen nicht, nur die Folge.",
  ],
  "one.clockPutBack": [
    "comes after the gauge's clock was put back; earlier times are not used, only the order.",
    "kommt, nachdem die Uhr zurückgestellt wurde; frühere Zeiten zählen nicht, nur die Folge.",
  ],
  "p.leaveOut": ["Leave out", "Weglassen"],
  "p.countOnce": ["Count once", "Einmal zählen"],
  "p.scale": ["Convert", "Umrechnen"],
  "p.swap": ["Swapped, as shown", "Vertauscht, wie gezeigt"],
  "p.fileAsShown": ["Right as shown", "Richtig wie gezeigt"],
  "p.orderOnly": ["Use the order only", "Nur die Folge benutzen"],
  "p.measureAgain": ["Leave out, measure again", "Weglassen, neu messen"],
  asStored: ["No, as stored", "Nein, wie gespeichert"],
  leaveOut: ["Leave out", "Weglassen"],
  moved: ["moved by hand", "von Hand verschoben"],
  all: [(act: string, n: number) => `${act}: all ${n}`, (act: string, n: number) => `${act}: alle ${n}`],
  rest: [(act: string, n: number) => `${act}: the other ${n}`, (act: string, n: number) => `${act}: die übrigen ${n}`],
  answered: [
    (done: number, of: number) => `${done} of ${of} answered`,
    (done: number, of: number) => `${done} von ${of} beantwortet`,
  ],
  oneByOne: [(n: number) => `Look at the ${n} one by one`, (n: number) => `Die ${n} einzeln ansehen`],
  takeBack: ["Take back", "Zurücknehmen"],
  takeBackAll: [(n: number) => `Take back ${n} answers`, (n: number) => `${n} Antworten zurücknehmen`],
  takeBackStep: ["Take the last step back", "Letzten Schritt zurücknehmen"],
  more: [(n: number) => `Show ${n} more`, (n: number) => `${n} weitere zeigen`],
});
