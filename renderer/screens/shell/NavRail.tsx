import { useStore } from "zustand";
import { useCore, useProgram } from "../../state/CoreContext.ts";
import type { Route } from "../../state/routeStore.ts";
import { useSpeech, useWords } from "../../words/SpeechContext.tsx";
import { linkTexts } from "../link/texts.ts";
import { shellTexts } from "./texts.ts";

const places = ["measure", "dock", "spindles", "rounds", "gauges", "records", "setup"] as const;

/** The places, and at their foot how the gauge is doing. On a narrow window they lie along the bottom, near the thumbs. */
export function NavRail({ place }: { readonly place: Route["place"] }) {
  const words = useWords(shellTexts);
  const works = useProgram((state) => state.works?.name);
  const here = place === "spindle" ? "spindles" : place;
  return (
    <nav aria-label={words.places}>
      <button type="button" className="skip" onClick={() => document.getElementById("content")?.focus()}>
        {words.skip}
      </button>
      <b className="brand">Holdfast</b>
      <ul>
        {places.map((one) => (
          <li key={one}>
            <a href={`#/${one}`} aria-current={one === here ? "page" : undefined}>
              {words[one]}
            </a>
          </li>
        ))}
      </ul>
      <div className="foot">
        {works !== undefined && <span>{works}</span>}
        <LinkLine />
      </div>
    </nav>
  );
}

function LinkLine() {
  const core = useCore();
  const speech = useSpeech();
  const words = useWords(linkTexts);
  const link = useStore(core.link, (state) => state.link);
  if (link === undefined || link.state === "closed") return <span>{words.closed}</span>;
  const reading =
    link.rateHz === undefined || link.rateHz === null
      ? words.openNoRate
      : words.open(speech.number(link.rateHz, link.rateHz < 10 ? 1 : 0));
  const state = link.state === "open" ? reading : words[link.state];
  return (
    <>
      <span>{link.source?.kind === "simulated" ? words.simulated : link.label}</span>
      <span>
        <i className={link.state === "open" ? "link-dot on" : "link-dot off"} aria-hidden="true" />
        {state}
      </span>
    </>
  );
}
