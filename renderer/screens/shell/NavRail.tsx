import Activity from "lucide-react/icons/activity";
import Records from "lucide-react/icons/archive";
import Dock from "lucide-react/icons/arrow-down-to-line";
import Help from "lucide-react/icons/circle-question-mark";
import Gauge from "lucide-react/icons/gauge";
import Spindles from "lucide-react/icons/list-ordered";
import Rounds from "lucide-react/icons/route";
import Settings from "lucide-react/icons/settings";
import { useStore } from "zustand";
import type { LinkView } from "../../../app/contract/linkViews.ts";
import { useCore, useProgram } from "../../state/CoreContext.ts";
import { hrefOf, type Route } from "../../state/routeStore.ts";
import { useSpeech, useWords } from "../../words/SpeechContext.tsx";
import { helpFor } from "../help/helpFor.ts";
import { linkTexts } from "../link/texts.ts";
import { shellTexts } from "./texts.ts";

/** Each place with its picture; the word beside it says the same. */
const places = [
  ["measure", Activity],
  ["dock", Dock],
  ["spindles", Spindles],
  ["rounds", Rounds],
  ["gauges", Gauge],
  ["records", Records],
  ["setup", Settings],
] as const;

const ofGauges: readonly Route["place"][] = ["gauge", "proving", "proof", "factor"];

/** The places, and at their foot how the gauge is doing. On a narrow window they lie along the bottom, near the thumbs. */
export function NavRail({ route }: { readonly route: Route }) {
  const words = useWords(shellTexts);
  const works = useProgram((state) => state.works?.name);
  const { place } = route;
  const here = place === "spindle" ? "spindles" : ofGauges.includes(place) ? "gauges" : place;
  return (
    <nav aria-label={words.places}>
      <button type="button" className="skip" onClick={() => document.getElementById("content")?.focus()}>
        {words.skip}
      </button>
      <b className="brand">Holdfast</b>
      <ul>
        {places.map(([one, Icon]) => (
          <li key={one}>
            <a href={`#/${one}`} aria-current={one === here ? "page" : undefined}>
              <Icon size={20} strokeWidth={1.8} aria-hidden="true" />
              {words[one]}
            </a>
          </li>
        ))}
        <li className="apart">
          <a href={hrefOf(helpFor(route))} aria-current={here === "help" ? "page" : undefined} aria-keyshortcuts="F1">
            <Help size={20} strokeWidth={1.8} aria-hidden="true" />
            {words.help}
          </a>
        </li>
      </ul>
      <div className="foot">
        {works !== undefined && <span>{works}</span>}
        <LinkLine />
      </div>
    </nav>
  );
}

/** Filled: it is read. Hollow: it is on its way. A diamond: it is not there. */
const dotOf = (state: LinkView["state"]) =>
  state === "open" ? "on" : state === "opening" || state === "listening" ? "" : "off";

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
        <i className={`link-dot ${dotOf(link.state)}`} aria-hidden="true" />
        {state}
      </span>
    </>
  );
}
