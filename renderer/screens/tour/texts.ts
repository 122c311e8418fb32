import { inBoth } from "../../words/inBoth.ts";

/** The tour of the demo: one short paragraph a step. */
export const tourTexts = inBoth({
  tour: ["Tour of the demo", "Tour durch die Demo"],
  progress: [
    (step: string, of: string) => `Step ${step} of ${of}`,
    (step: string, of: string) => `Schritt ${step} von ${of}`,
  ],
  showMe: ["Show me", "Zeig es mir"],
  next: ["Next", "Weiter"],
  back: ["Back", "Zurück"],
  pause: ["Go on later", "Später weiter"],
  finish: ["End the tour", "Tour beenden"],
  offerTitle: ["A tour of the demo", "Eine Tour durch die Demo"],
  offer: [
    "Five minutes through a works that has everything: tiring springs, a broken one, a dry gripper, a gauge gone off, a docked round, a proof. Leave it whenever you like; its place is kept.",
    "Fünf Minuten durch ein Werk, das alles hat: müde Federn, eine gebrochene, ein trockener Greifer, ein Messgerät, das danebenliegt, ein ausgelesener Rundgang, eine Geräteprüfung. Jederzeit zu verlassen; die Stelle bleibt gemerkt.",
  ],
  begin: ["Take the tour", "Tour beginnen"],
  openAndBegin: ["Open the demo and take the tour", "Demo öffnen und Tour beginnen"],
  resume: [(step: string) => `Go on at step ${step}`, (step: string) => `Bei Schritt ${step} weiter`],
  again: ["Take it again", "Noch einmal"],
  listTitle: ["Which spindle first?", "Welche Spindel zuerst?"],
  list: [
    "This works is invented, three years of it. Open Spindles: the list stands in the order in which to act.",
    "Dieses Werk ist erfunden, drei Jahre lang. Spindeln öffnen: Die Liste steht in der Reihenfolge des Handelns.",
  ],
  tiredTitle: ["A tiring spring pack", "Ein müdes Federpaket"],
  tired: ["Mill 2 is watched. Open it to see why.", "Mill 2 wird beobachtet. Öffnen und sehen, warum."],
  tiredLook: [
    "A slow steady fall, check after check: springs tire. The band goes on to the warning limit, and the bar below says between which months. Watching now means planning, not hurrying.",
    "Langsames stetiges Fallen, Prüfung um Prüfung: Federn werden müde. Das Band läuft weiter bis zur Warngrenze, und der Balken unten sagt, zwischen welchen Monaten. Jetzt zu beobachten heißt planen statt hetzen.",
  ],
  brokenTitle: ["A broken spring", "Eine gebrochene Feder"],
  broken: ["Now Mill 3, in the same list.", "Nun Mill 3, in derselben Liste."],
  brokenLook: [
    "No slope: a step, from one check to the next, and level again. That is what broken discs look like. The step is marked, with its size and its interval; what the pattern looks like stands beside it, with its evidence.",
    "Kein Gefälle: ein Sprung von einer Prüfung zur nächsten, danach wieder stabil. So sehen gebrochene Federn aus. Der Sprung ist eingezeichnet, mit Größe und Intervall; wonach es aussieht, steht daneben, mit den Belegen.",
  ],
  dryTitle: ["A dry gripper, greased", "Ein trockener Greifer, geschmiert"],
  dry: [
    "Mill 5 ran dry and was greased. Did it help? Open it.",
    "Mill 5 lief trocken und wurde geschmiert. Hat es geholfen? Öffnen.",
  ],
  dryLook: [
    "The check before and the check after the service side by side, with the uncertainty of the difference. The scatter from clamping to clamping fell too: that speaks for friction, not for springs.",
    "Die Prüfung vor und die nach der Wartung nebeneinander, mit der Unsicherheit des Unterschieds. Auch die Streuung von Spannvorgang zu Spannvorgang fiel: Das spricht für Reibung, nicht für Federn.",
  ],
  gaugeTitle: ["A gauge gone off", "Ein Messgerät, das danebenliegt"],
  gauge: [
    "Back to the list of spindles: something happened in Hall C.",
    "Zurück zur Liste der Spindeln: In Hall C ist etwas geschehen.",
  ],
  gaugeLook: [
    "Seven spindles fell together, all of them measured with Gauge 2; those measured without it did not. Seven spindles do not tire on one day: the gauge is looked at first, and nobody takes a spindle apart for nothing.",
    "Sieben Spindeln fielen gemeinsam, alle mit Gauge 2 gemessen; die anderen nicht. Sieben Spindeln ermüden nicht am selben Tag: Zuerst wird das Messgerät angesehen, und niemand zerlegt umsonst eine Spindel.",
  ],
  dockTitle: ["A round comes back", "Ein Rundgang kommt zurück"],
  dock: [
    "A round was walked with the gauge alone; its memory holds the values. Open Dock.",
    "Ein Rundgang wurde nur mit dem Messgerät gegangen; dessen Speicher hält die Werte. Auslesen öffnen.",
  ],
  dockRead: [
    "In the demo one act brings the simulated gauge back from its round: eight spindles, twenty-odd readings. Press it.",
    "In der Demo bringt ein Griff das simulierte Messgerät vom Rundgang zurück: acht Spindeln, gut zwanzig Werte. Drücken.",
  ],
  swapTitle: ["Two spindles swapped", "Zwei Spindeln vertauscht"],
  swap: [
    "What is sure is placed; what is not is asked. Among the questions: two spindles measured the other way round than the sheet said. Each question has its proposal; answer them one after another. A wrong click can be answered anew.",
    "Sicheres ist zugeordnet; Unsicheres wird gefragt. Unter den Fragen: zwei Spindeln, andersherum gemessen als auf dem Blatt. Jede Frage hat ihren Vorschlag; eine nach der anderen beantworten. Ein falscher Klick lässt sich neu beantworten.",
  ],
  dockFile: [
    "Everything is answered. One act files the whole round.",
    "Alles ist beantwortet. Ein Griff legt den ganzen Rundgang ab.",
  ],
  dockLook: [
    "Every value is judged and filed as if measured live, the gravest first; the docking keeps every raw line. Docked once more, the gauge brings nothing new.",
    "Jeder Wert ist beurteilt und abgelegt wie ein gemessener, der ernsteste zuerst; jede rohe Zeile bleibt erhalten. Noch einmal ausgelesen, bringt das Messgerät nichts Neues.",
  ],
  proofTitle: ["Can the gauge be trusted?", "Ist dem Messgerät zu trauen?"],
  proof: [
    "Gauge 2 is past due, and the spindles spoke against it. Open Gauges.",
    "Gauge 2 ist überfällig, und die Spindeln sprachen gegen es. Messgeräte öffnen.",
  ],
  proofGauge: ["Open Gauge 2.", "Gauge 2 öffnen."],
  proofPlan: [
    "Its page holds every proof and adjustment. Begin one: Prove this gauge.",
    "Seine Seite hält jede Prüfung und Justierung. Eine beginnen: dieses Messgerät prüfen.",
  ],
  proofLook: [
    "Choose the method and a reference; the program leads from load to load and takes each reading when it is steady, here from a simulated load. The result names every check the gauge touched since its last proof; nothing filed is changed, spindles can be marked for measuring again.",
    "Methode und Referenz wählen; das Programm führt von Last zu Last und nimmt jeden Wert, wenn er ruhig ist, hier von einer simulierten Last. Das Ergebnis nennt jede Prüfung, die das Messgerät seit seiner letzten berührt hat; Abgelegtes ändert sich nicht, Spindeln lassen sich zum Nachmessen vormerken.",
  ],
  measureTitle: ["Your turn", "Jetzt Sie"],
  measure: [
    "Last: a check of your own, with the simulated gauge. Open Measure.",
    "Zum Schluss eine eigene Prüfung mit dem simulierten Messgerät. Messen öffnen.",
  ],
  measureLook: [
    "Connect the simulated gauge, choose a spindle (S), press Clamp and Release three times, then the space bar. Under Faults you can let it run dry, break a spring or pull the plug.",
    "Das simulierte Messgerät verbinden, eine Spindel wählen (S), dreimal Spannen und Lösen, dann die Leertaste. Unter Störungen kann es trocken laufen, eine Feder brechen oder den Stecker verlieren.",
  ],
});
