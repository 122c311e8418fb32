import { useEffect, useState } from "react";
import type { DataPlace } from "../../../app/contract/supportViews.ts";
import { useCore } from "../../state/CoreContext.ts";
import { useSpeech, useWords } from "../../words/SpeechContext.tsx";
import { sizeText } from "../../words/sizeText.ts";
import { setupTexts } from "./texts.ts";

/** Everything that is kept on this PC: what, where, how large, how long. */
export function PlaceList() {
  const core = useCore();
  const speech = useSpeech();
  const words = useWords(setupTexts);
  const [places, setPlaces] = useState<readonly DataPlace[]>([]);
  useEffect(() => {
    let here = true;
    core.client.call("places.list", {}).then((answer) => {
      if (here && answer.ok) setPlaces(answer.value);
    });
    return () => {
      here = false;
    };
  }, [core]);
  return (
    <dl className="places">
      {places.map(({ what, path, bytes }) => (
        <div key={what}>
          <dt>
            {words[`place.${what}`]}{" "}
            <small>{bytes === undefined || bytes === null ? words.placeNone : sizeText(bytes, speech)}</small>
          </dt>
          <dd className="path">{path}</dd>
          <dd className="small soft">{words[`place.${what}Why`]}</dd>
        </div>
      ))}
    </dl>
  );
}
