import { useCore, useProgram } from "../../state/CoreContext.ts";
import { Button } from "../../ui/Button.tsx";
import { useSpeech, useWords } from "../../words/SpeechContext.tsx";
import { useReport } from "../shell/useReport.ts";
import { resumeAt } from "./steps.ts";
import { tourTexts } from "./texts.ts";
import { useTourPlace } from "./useTourPlace.ts";

/** Begins the tour, or goes on where it was left; outside the demo it opens the demo first. */
export function TourOffer() {
  const core = useCore();
  const report = useReport();
  const speech = useSpeech();
  const words = useWords(tourTexts);
  const demo = useProgram((state) => state.program?.demo === true);
  const [place, move] = useTourPlace();
  const begin = async (step: number) => {
    await move({ step, state: "running" });
    if (!demo && (await report(core.client.call("program.openDemo", {}))) !== undefined) core.loadAnew();
  };
  const left = place?.state === "paused" ? resumeAt(place.step) : undefined;
  return (
    <section className="stack">
      <div>
        <h3>{words.offerTitle}</h3>
        <p className="why">{words.offer}</p>
      </div>
      <div className="row">
        {left !== undefined && (
          <Button kind="main" onClick={() => begin(left)}>
            {words.resume(speech.number(left + 1))}
          </Button>
        )}
        <Button onClick={() => begin(0)}>
          {!demo ? words.openAndBegin : place === undefined ? words.begin : words.again}
        </Button>
      </div>
    </section>
  );
}
