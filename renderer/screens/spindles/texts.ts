import { inBoth } from "../../words/inBoth.ts";

/** Everything the list of spindles says. */
export const spindlesTexts = inBoth({
  title: ["Spindles", "Spindeln"],
  ranked: [
    (n: number) => `${n}, ranked by what to do next`,
    (n: number) => `${n}, gereiht nach dem, was als Nächstes ansteht`,
  ],
  shown: [(n: number, of: number) => `${n} of ${of}`, (n: number, of: number) => `${n} von ${of}`],
  add: ["Add a spindle", "Spindel anlegen"],
  search: ["Search by name, machine, serial number", "Nach Name, Maschine, Seriennummer suchen"],
  allAreas: ["All areas", "Alle Bereiche"],
  allTapers: ["All tapers", "Alle Kegel"],
  order: ["Order", "Reihenfolge"],
  "order.rank": ["What to do next first", "Das Nächste zuerst"],
  "order.name": ["By name", "Nach Name"],
  "order.area": ["By area", "Nach Bereich"],
  "order.taper": ["By taper", "Nach Kegel"],
  "order.due": ["By due date", "Nach Fälligkeit"],
  "order.force": ["By force, the least first", "Nach Kraft, die kleinste zuerst"],
  "order.measured": ["By last check, the oldest first", "Nach letzter Prüfung, die älteste zuerst"],
  allVerdicts: ["All verdicts", "Alle Urteile"],
  area: ["Area", "Bereich"],
  taper: ["Taper", "Kegel"],
  verdict: ["verdict", "Urteil"],
  withRetired: ["Retired ones too", "Auch stillgelegte"],
  emptyTitle: ["No spindle yet", "Noch keine Spindel"],
  emptyWhy: [
    "A spindle is a place in a machine: its name, its taper and the builder's figures are enough to begin. Each check is filed to one.",
    "Eine Spindel ist ein Platz in einer Maschine: Name, Kegel und die Zahlen des Herstellers genügen für den Anfang. Jede Prüfung wird bei einer abgelegt.",
  ],
  noneFit: ["None fits these filters.", "Keine passt zu diesen Filtern."],
  clearFilters: ["Show all", "Alle zeigen"],

  colSpindle: ["spindle", "Spindel"],
  colSpark: ["history, % of baseline", "Verlauf, % vom Ausgangswert"],
  colLast: ["last", "zuletzt"],
  colWhy: ["why", "warum"],
  colWhen: ["reaches a limit", "erreicht eine Grenze"],
  sparkAbout: [
    (first: string, last: string) => `from ${first} to ${last} of the baseline`,
    (first: string, last: string) => `von ${first} auf ${last} des Ausgangswerts`,
  ],
  stopStands: ["a stop stands", "ein Stopp steht"],
  on: [(date: string) => `on ${date}`, (date: string) => `am ${date}`],

  whenNow: ["now", "jetzt"],
  whenNotSoon: ["not within ten years", "nicht in zehn Jahren"],
  whenCannotTell: ["cannot tell", "nicht zu sagen"],
  whenFrom: [(low: string) => `from ${low} on`, (low: string) => `ab ${low}`],
  whenBetween: [
    (low: string, high: string) => `${low} to ${high}`,
    (low: string, high: string) => `${low} bis ${high}`,
  ],
  whenIn: [(month: string) => `about ${month}`, (month: string) => `etwa ${month}`],

  lookAtGauge: [(name: string) => `Look at ${name} first.`, (name: string) => `Zuerst ${name} ansehen.`],
  fellTogether: [
    (n: number, of: number, since: string, share: string) =>
      `${n === of ? `All ${n}` : `${n} of the ${of}`} spindles measured with it since ${since} fell together, by about ${share}; those measured without it did not.`,
    (n: number, of: number, since: string, share: string) =>
      `${n === of ? `Alle ${n}` : `${n} der ${of}`} Spindeln, die seit ${since} damit gemessen wurden, sind gemeinsam gefallen, um etwa ${share}; die ohne es gemessenen nicht.`,
  ],
  roseTogether: [
    (n: number, of: number, since: string, share: string) =>
      `${n === of ? `All ${n}` : `${n} of the ${of}`} spindles measured with it since ${since} rose together, by about ${share}; those measured without it did not.`,
    (n: number, of: number, since: string, share: string) =>
      `${n === of ? `Alle ${n}` : `${n} der ${of}`} Spindeln, die seit ${since} damit gemessen wurden, sind gemeinsam gestiegen, um etwa ${share}; die ohne es gemessenen nicht.`,
  ],
  proveGauge: [
    "Prove this gauge against a reference, or measure one of these spindles with another gauge, before any spindle is taken apart.",
    "Dieses Messgerät gegen eine Referenz prüfen oder eine dieser Spindeln mit einem anderen messen, bevor eine Spindel zerlegt wird.",
  ],
  proveAdapter: [
    "Look this adapter over and prove it with its gauge, or measure one of these spindles with another adapter, before any spindle is taken apart.",
    "Diesen Adapter ansehen und mit seinem Messgerät prüfen oder eine dieser Spindeln mit einem anderen messen, bevor eine Spindel zerlegt wird.",
  ],
  toGauges: ["Gauges and adapters", "Messgeräte und Adapter"],
  movedWith: [
    (name: string) => `moved along with others on ${name}`,
    (name: string) => `bewegte sich gemeinsam mit anderen an ${name}`,
  ],
  orOther: [
    (names: string) => `They share ${names} too, so it may be that.`,
    (names: string) => `Gemeinsam ist ihnen auch ${names}; auch das kann es sein.`,
  ],
  worst: [(name: string) => `${name} first.`, (name: string) => `${name} zuerst.`],
  worstWhy: [
    (verdict: string, why: string) => `Its last verdict is ${verdict}: ${why}.`,
    (verdict: string, why: string) => `Ihr letztes Urteil ist „${verdict}“: ${why}.`,
  ],
  othersAct: [
    (n: number) => (n === 1 ? "One more calls for action." : `${n} more call for action.`),
    (n: number) => (n === 1 ? "Bei einer weiteren ist zu handeln." : `Bei ${n} weiteren ist zu handeln.`),
  ],
  othersWatch: [
    (n: number) => (n === 1 ? "One is watched." : `${n} are watched.`),
    (n: number) => (n === 1 ? "Eine wird beobachtet." : `${n} werden beobachtet.`),
  ],
  risk: [
    (share: string) => `below minimum by the next round: ${share}`,
    (share: string) => `beim nächsten Rundgang unter Mindestkraft: ${share}`,
  ],
  atWarning: [(when: string) => `warning limit: ${when}`, (when: string) => `Warngrenze: ${when}`],
  atMinimum: [(when: string) => `minimum: ${when}`, (when: string) => `Mindestkraft: ${when}`],
  allGood: ["All measured spindles are good.", "Alle gemessenen Spindeln sind gut."],
  noneMeasured: [
    "None has been measured yet. Begin on Measure: choose the spindle, clamp three times, file.",
    "Noch keine wurde gemessen. Anfang unter Messen: Spindel wählen, dreimal spannen, ablegen.",
  ],
});
