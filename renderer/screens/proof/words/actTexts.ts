import { inBoth } from "../../../words/inBoth.ts";

/** The acts of a led proof, in the words one would call across the shop. */
export const actTexts = inBoth({
  cautions: ["Before the first load", "Vor der ersten Last"],
  mount: [
    (degrees: string) => `Turn the gauge to ${degrees}°`,
    (degrees: string) => `Messgerät auf ${degrees}° drehen`,
  ],
  mountFirst: [
    (degrees: string) => `Mount the gauge at ${degrees}°`,
    (degrees: string) => `Messgerät bei ${degrees}° einbauen`,
  ],
  preload: [
    (force: string) => `Preload to ${force} and unload; nothing is read`,
    (force: string) => `Auf ${force} vorbelasten und entlasten; nichts wird gelesen`,
  ],
  zeroBefore: ["Unload: zero before the loads", "Entlasten: Null vor den Lasten"],
  zeroAfter: ["Unload: zero after the loads", "Entlasten: Null nach den Lasten"],
  up: [(force: string) => `Load up to ${force}`, (force: string) => `Auf ${force} belasten`],
  down: [(force: string) => `Unload down to ${force}`, (force: string) => `Auf ${force} entlasten`],
  creep30: [
    (force: string) => `Hold ${force}: creep, first reading`,
    (force: string) => `${force} halten: Kriechen, erster Wert`,
  ],
  creep300: [
    (force: string) => `Hold ${force}: creep, second reading`,
    (force: string) => `${force} halten: Kriechen, zweiter Wert`,
  ],
  "short.mount": [(degrees: string) => `turn to ${degrees}°`, (degrees: string) => `auf ${degrees}° drehen`],
  "short.preload": [(n: number) => `preload ${n}`, (n: number) => `Vorlast ${n}`],
  "short.cautions": ["cautions", "Vorsicht"],
  "short.zeroBefore": ["zero before", "Null vorher"],
  "short.zeroAfter": ["zero after", "Null nachher"],
  "short.down": [(force: string) => `down ${force}`, (force: string) => `ab ${force}`],
  "short.creep30": ["creep, 30 s", "Kriechen, 30 s"],
  "short.creep300": ["creep, 300 s", "Kriechen, 300 s"],
  run: [(run: string) => `Run ${run}`, (run: string) => `Lauf ${run}`],
});
