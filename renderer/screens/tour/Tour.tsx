import { useEffect, useRef, useState } from "react";
import { go, type Route } from "../../state/routeStore.ts";
import { useList } from "../../state/useList.ts";
import { Button } from "../../ui/Button.tsx";
import { useHeightAs } from "../../ui/useHeightAs.ts";
import { useSpeech, useWords } from "../../words/SpeechContext.tsx";
import { isStepDone, type TourSight, type TourStep, tourSteps } from "./steps.ts";
import { tourTexts } from "./texts.ts";
import { LOOK_AGAIN_MS, usePointAt } from "./usePointAt.ts";
import { useTourPlace } from "./useTourPlace.ts";
import "./tour.css";

/** The tour's card: it says one thing, points at it and waits. It lies beside the work and never before it. */
export function Tour({ route }: { readonly route: Route }) {
  const speech = useSpeech();
  const words = useWords(tourTexts);
  const [place, move] = useTourPlace();
  const spindles = useList("spindles").rows;
  const gauges = useList("gauges").rows;
  const card = useRef<HTMLElement>(null);
  useHeightAs("--tour-height", card);
  const at = Math.min(place?.step ?? 0, tourSteps.length - 1);
  const step = tourSteps[at]!; // within the list
  const sight: TourSight = {
    route,
    spindleIdOf: (name) => spindles?.find(({ spindle }) => spindle.name === name)?.spindle.spindleId,
    gaugeIdOf: (name) => gauges?.find(({ gauge }) => gauge.name === name)?.gauge.gaugeId,
  };
  const brought = useBrought(step);
  const done = brought || isStepDone(step, sight);
  const isLast = at === tourSteps.length - 1;
  usePointAt(done ? undefined : step.at(sight));
  useEffect(() => {
    if (done) move({ step: at + 1, state: "running" });
  }, [done, at, move]);
  const target = step.leadsTo?.(sight);
  const showMe = () => {
    if (target !== undefined) go(target);
    else if (step.press !== undefined) document.querySelector<HTMLElement>(step.press)?.click();
  };
  const isAct = step.leadsTo !== undefined || step.press !== undefined;
  return (
    <section className="tour" aria-label={words.tour} ref={card}>
      <div role="status">
        <small>{words.progress(speech.number(at + 1), speech.number(tourSteps.length))}</small>
        <h2>{words[step.title]}</h2>
        <p>{words[step.text]}</p>
      </div>
      <div className="row">
        {!isAct ? (
          <Button
            kind="main"
            onClick={() => move(isLast ? { step: at, state: "done" } : { step: at + 1, state: "running" })}
          >
            {isLast ? words.finish : words.next}
          </Button>
        ) : (
          <Button kind="main" onClick={showMe}>
            {words.showMe}
          </Button>
        )}
        {step.press !== undefined && (
          <Button onClick={() => move({ step: at + 1, state: "running" })}>{words.next}</Button>
        )}
        {at > 0 && <Button onClick={() => move({ step: lastLookBefore(at), state: "running" })}>{words.back}</Button>}
        <Button kind="quiet" onClick={() => move({ step: at, state: "paused" })}>
          {words.pause}
        </Button>
      </div>
    </section>
  );
}

/** Whether what a step's button brings stands on the page; looked for while the step waits. */
function useBrought(step: TourStep): boolean {
  const [seen, setSeen] = useState<TourStep>();
  useEffect(() => {
    const { brought } = step;
    if (brought === undefined) return;
    const timer = setInterval(() => {
      if (brought(document)) setSeen(step);
    }, LOOK_AGAIN_MS);
    return () => clearInterval(timer);
  }, [step]);
  return seen === step;
}

/** A step that is done where one stands would be left again at once: back goes to the one before that has something to see. */
function lastLookBefore(at: number): number {
  const before = tourSteps.slice(0, at).findLastIndex((step) => step.leadsTo === undefined && step.press === undefined);
  return Math.max(0, before);
}
