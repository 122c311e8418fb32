import { lazy, Suspense, useState } from "react";
import { useStore } from "zustand";
import { useCore, useProgram } from "../../state/CoreContext.ts";
import { hrefOf, type Route } from "../../state/routeStore.ts";
import { useList } from "../../state/useList.ts";
import { Button } from "../../ui/Button.tsx";
import { EmptyState } from "../../ui/feedback/EmptyState.tsx";
import { ScreenBoundary } from "../../ui/feedback/ScreenBoundary.tsx";
import { commonTexts } from "../../words/commonTexts.ts";
import { useWords } from "../../words/SpeechContext.tsx";
import { CheckScreen } from "../check/CheckScreen.tsx";
import { Dock } from "../dock/Dock.tsx";
import { Gauges } from "../gauges/Gauges.tsx";
import { Measure } from "../measure/Measure.tsx";
import { Records } from "../records/Records.tsx";
import { Rounds } from "../rounds/Rounds.tsx";
import { Setup } from "../setup/Setup.tsx";
import { SpindleScreen } from "../spindle/SpindleScreen.tsx";
import { Spindles } from "../spindles/Spindles.tsx";
import { Welcome } from "../welcome/Welcome.tsx";
import { shellTexts } from "./texts.ts";

/** These are read when they are wanted: nobody measures slower for them. */
const Help = lazy(async () => ({ default: (await import("../help/Help.tsx")).Help }));
const ProofPlaces = lazy(async () => ({ default: (await import("../proof/ProofPlaces.tsx")).ProofPlaces }));

/** The screen of a place, with its own boundary: a fault in one leaves the others standing. */
export function Screen({ route }: { readonly route: Route }) {
  const words = useWords(shellTexts);
  const common = useWords(commonTexts);
  return (
    <ScreenBoundary
      key={ofOneThing(route) ? hrefOf(route) : route.place}
      fallback={(again) => (
        <EmptyState title={words.screenFailed} act={<Button onClick={again}>{common.tryAgain}</Button>}>
          {words.screenFailedWhy}
        </EmptyState>
      )}
    >
      <Suspense fallback={<p role="status">{common.loading}</p>}>{screenOf(route)}</Suspense>
    </ScreenBoundary>
  );
}

/** Of these each has its own state: going from one to the next begins anew. */
const ofOneThing = ({ place }: Route) =>
  place === "spindle" || place === "gauge" || place === "proof" || place === "factor";

function screenOf(route: Route) {
  switch (route.place) {
    case "spindles":
      return <Spindles />;
    case "spindle":
      return route.checkId === undefined ? (
        <SpindleScreen spindleId={route.spindleId} />
      ) : (
        <CheckScreen spindleId={route.spindleId} checkId={route.checkId} />
      );
    case "rounds":
      return <Rounds />;
    case "dock":
      return <Dock roundId={route.roundId} />;
    case "gauges":
      return <Gauges find={route.find} />;
    case "gauge":
    case "proving":
    case "proof":
    case "factor":
      return <ProofPlaces route={route} />;
    case "records":
      return <Records />;
    case "setup":
      return <Setup />;
    case "help":
      return <Help topic={route.topic} about={route.about} />;
    case "measure":
      return <FirstOrMeasure />;
  }
}

/** Where nothing is known yet, the first place leads by the hand; what has been begun is never hidden by it. */
function FirstOrMeasure() {
  const core = useCore();
  const [past, setPast] = useState(false);
  const empty = useProgram((state) => state.program?.empty === true);
  const spindles = useList("spindles").rows;
  const begun = useStore(
    core.draft,
    ({ draft }) =>
      draft !== undefined &&
      (draft.cycles.length > 0 || draft.typed !== undefined || draft.tag.spindleId !== undefined),
  );
  const first = empty && (spindles ?? []).length === 0 && !begun && !past;
  return first ? <Welcome onMeasure={() => setPast(true)} /> : <Measure />;
}
