import { hrefOf, type Route } from "../../state/routeStore.ts";
import type { tourTexts } from "./texts.ts";

type English = typeof tourTexts.en;
/** The texts that are plain sentences. */
type Word = { [K in keyof English]: English[K] extends string ? K : never }[keyof English];

/** What a step can ask about where the reader is. */
export type TourSight = {
  readonly route: Route;
  /** Undefined: the list is not there yet, or has no such spindle. */
  readonly spindleIdOf: (name: string) => string | undefined;
  readonly gaugeIdOf: (name: string) => string | undefined;
};

/** One step: a title, one short paragraph, the thing it points at, and the act it waits for. */
export type TourStep = {
  readonly title: Word;
  readonly text: Word;
  /** Selector of the thing pointed at. */
  readonly at: (sight: TourSight) => string | undefined;
  /** Where the act leads. Absent: there is only something to look at, and "next" goes on. */
  readonly leadsTo?: (sight: TourSight) => Route | undefined;
  /** The button the act presses, where it is one. */
  readonly press?: string;
  /** Whether what the button brings is on the page. */
  readonly brought?: (page: ParentNode) => boolean;
};

const link = (hash: string) => `nav a[href="${hash}"]`;
const toList: Pick<TourStep, "at" | "leadsTo"> = {
  at: () => link("#/spindles"),
  leadsTo: () => ({ place: "spindles" }),
};
/** The spindle's line in the list; on another page, the way to the list. */
const toSpindle = (name: string): Pick<TourStep, "at" | "leadsTo"> => ({
  at: ({ route, spindleIdOf }) => {
    const spindleId = spindleIdOf(name);
    return route.place === "spindles" && spindleId !== undefined
      ? `main a[href="#/spindles/${spindleId}"]`
      : link("#/spindles");
  },
  leadsTo: ({ spindleIdOf }) => {
    const spindleId = spindleIdOf(name);
    return spindleId === undefined ? undefined : { place: "spindle", spindleId };
  },
});
/** A gauge's page and, from there, the plan of its proof. */
const toGauge = (name: string, part: "prove" | undefined): Pick<TourStep, "at" | "leadsTo"> => ({
  at: ({ gaugeIdOf }) => `main a[href="#/gauges/${gaugeIdOf(name)}${part === undefined ? "" : `/${part}`}"]`,
  leadsTo: ({ gaugeIdOf }) => {
    const gaugeId = gaugeIdOf(name);
    return gaugeId === undefined ? undefined : { place: "gauge", gaugeId, part };
  },
});
const pressing = (press: string): Pick<TourStep, "at" | "press"> => ({ at: () => press, press });
const questions = '[aria-labelledby="questions-title"]';
const look = (selector: string): Pick<TourStep, "at"> => ({ at: () => selector });

/** The stories of the demo works, in the order a newcomer understands them. */
export const tourSteps: readonly TourStep[] = [
  { title: "listTitle", text: "list", ...toList },
  { title: "tiredTitle", text: "tired", ...toSpindle("Mill 2") },
  { title: "tiredTitle", text: "tiredLook", ...look(".trend") },
  { title: "brokenTitle", text: "broken", ...toSpindle("Mill 3") },
  { title: "brokenTitle", text: "brokenLook", ...look(".trend") },
  { title: "dryTitle", text: "dry", ...toSpindle("Mill 5") },
  { title: "dryTitle", text: "dryLook", ...look(".facts") },
  { title: "gaugeTitle", text: "gauge", ...toList },
  { title: "gaugeTitle", text: "gaugeLook", ...look(".common-mode") },
  { title: "dockTitle", text: "dock", at: () => link("#/dock"), leadsTo: () => ({ place: "dock" }) },
  {
    title: "dockTitle",
    text: "dockRead",
    ...pressing(".demo-dock .button"),
    brought: (page) => page.querySelector(`${questions}, .accept-line`) !== null,
  },
  {
    title: "swapTitle",
    text: "swap",
    ...pressing(`${questions} .button.main`),
    brought: (page) => page.querySelector(".accept-line .main:enabled, #filed-title") !== null,
  },
  {
    title: "swapTitle",
    text: "dockFile",
    ...pressing(".accept-line .main"),
    brought: (page) => page.querySelector("#filed-title") !== null,
  },
  { title: "swapTitle", text: "dockLook", ...look('[aria-labelledby="filed-title"]') },
  { title: "proofTitle", text: "proof", at: () => link("#/gauges"), leadsTo: () => ({ place: "gauges" }) },
  { title: "proofTitle", text: "proofGauge", ...toGauge("Gauge 2", undefined) },
  { title: "proofTitle", text: "proofPlan", ...toGauge("Gauge 2", "prove") },
  { title: "proofTitle", text: "proofLook", ...look("main form, main .sheet") },
  { title: "measureTitle", text: "measure", at: () => link("#/measure"), leadsTo: () => ({ place: "measure" }) },
  { title: "measureTitle", text: "measureLook", ...look(".tags") },
];

/** Whether the act of a step is done where the reader is now. */
export function isStepDone(step: TourStep, sight: TourSight): boolean {
  const target = step.leadsTo?.(sight);
  return target !== undefined && hrefOf(target) === hrefOf(sight.route);
}

/** Where to go on after a pause: the last act that leads to a place, since what was to be looked at is on another screen now. */
export function resumeAt(step: number): number {
  return Math.max(
    0,
    tourSteps.slice(0, step + 1).findLastIndex(({ leadsTo }) => leadsTo !== undefined),
  );
}
