import type { WordMeaning } from "../linePattern.ts";

/**
 * Words gauges use beside a figure, by what they mean (common practice, no source). Words of one line belong together:
 * where one of them was seen, the others may come.
 */
const families: readonly Readonly<Partial<Record<WordMeaning, string>>>[] = [
  { stable: "ST", moving: "US", overload: "OL", underload: "UL" },
  { stable: "STABLE", moving: "UNSTABLE", overload: "OVERLOAD", underload: "UNDERLOAD" },
  { stable: "STILL", moving: "MOVING", overload: "OVER", underload: "UNDER" },
  { stable: "STEADY", moving: "MOTION", overload: "OVERRANGE", underload: "UNDERRANGE" },
  {
    stable: "STB SETTLED",
    moving: "UNST UNSTAB MOV MOVE MOT DYN DYNAMIC UN",
    overload: "OVL OVR OVLD OF OVF OVERFLOW OUTOFRANGE O.L O.L. O/L OVRLD",
    underload: "UFL UNDERFLOW UNDR UR",
  },
  { live: "LIVE ACT ACTUAL", held: "MAX PEAK", aside: "MIN" },
  {
    live: "NOW CUR CURRENT TRACK REAL RT NORM NORMAL RUN LV",
    held: "PK HOLD HELD MX MAXIMUM PEAKHOLD MAXHOLD TOP PH",
    aside: "MINIMUM VALLEY AVG MEAN VAL",
  },
  { lowBattery: "LB LOBAT LOWBAT LOWBATT BATT BAT BATLOW BATTERY LOWBATTERY BATTLOW LOBATT" },
  { other: "NET GROSS" },
  { other: "NT GS" },
  { other: "TARE TR FORCE LOAD CH CHAN CHANNEL OK READY VALUE DATA ZERO" },
];

const meanings = new Map<string, WordMeaning>();
for (const family of families) {
  // Object.entries widens the keys of the literal above.
  for (const [means, list] of Object.entries(family) as [WordMeaning, string][]) {
    for (const word of list.split(" ")) meanings.set(word, means);
  }
}

/** What a word of more than one letter says, or undefined when it says nothing known. */
export const meaningOf = (word: string): WordMeaning | undefined => meanings.get(word.toUpperCase());

export const isOverloadWord = (word: string): boolean => meaningOf(word) === "overload" || /^[-*_?#=.]{2,}$/.test(word);

/** The other words of a word's family, in its own case, with their meanings; words of several ways of writing stand alone. */
export function relativesOf(word: string): [string, WordMeaning][] {
  const family = families.find((f) => Object.values(f).some((list) => list.split(" ").includes(word.toUpperCase())));
  if (family === undefined) return [];
  const inCase = word === word.toLowerCase() ? lower : word === word.toUpperCase() ? same : capital;
  return (Object.entries(family) as [WordMeaning, string][]) // as above
    .filter(([, list]) => !list.includes(" ") || list === "LIVE ACT ACTUAL" || list === "MAX PEAK")
    .flatMap(([means, list]) => list.split(" ").map((w): [string, WordMeaning] => [inCase(w), means]));
}

const same = (word: string) => word;
const lower = (word: string) => word.toLowerCase();
const capital = (word: string) => word[0]! + word.slice(1).toLowerCase();

/** Single letters mean something only together: S beside U, L beside M. */
const letterSets: readonly Readonly<Record<string, WordMeaning>>[] = [
  { S: "stable", U: "moving", D: "moving", M: "moving", O: "overload" },
  { L: "live", A: "live", M: "held", P: "held", H: "held" },
  { R: "live", M: "held", P: "held", H: "held" },
  { N: "other", G: "other", T: "other" },
];

/** The meanings of single letters seen in one place of the line; undefined when they cannot be told. */
export function letterMeanings(letters: readonly string[]): Readonly<Record<string, WordMeaning>> | undefined {
  const upper = letters.map((letter) => letter.toUpperCase());
  const known = letterSets.find((set) => upper.every((letter) => Object.hasOwn(set, letter)));
  if (known === undefined || (upper.length === 1 && upper[0] !== "S" && known !== letterSets[3])) return undefined;
  const small = letters[0] === letters[0]!.toLowerCase();
  const entries = Object.entries(known).filter(([letter]) => known === letterSets[0] || upper.includes(letter));
  return Object.fromEntries(entries.map(([letter, means]) => [small ? letter.toLowerCase() : letter, means]));
}
