import { useProgram } from "../../state/CoreContext.ts";
import { Button } from "../../ui/Button.tsx";
import { useSpeech, useWords } from "../../words/SpeechContext.tsx";
import { resumeAt } from "./steps.ts";
import { tourTexts } from "./texts.ts";
import { useTourPlace } from "./useTourPlace.ts";

/** The way into the tour from every page of the demo, until it has been taken to its end. */
export function TourDoor() {
  const speech = useSpeech();
  const words = useWords(tourTexts);
  const running = useProgram((state) => state.settings.tour?.state === "running");
  const [place, move] = useTourPlace();
  if (running || place?.state === "done") return null;
  const step = place === undefined ? 0 : resumeAt(place.step);
  return (
    <Button kind="quiet" onClick={() => move({ step, state: "running" })}>
      {place === undefined ? words.begin : words.resume(speech.number(step + 1))}
    </Button>
  );
}
