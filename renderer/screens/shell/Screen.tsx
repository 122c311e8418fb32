import type { Route } from "../../state/routeStore.ts";
import { Button } from "../../ui/Button.tsx";
import { EmptyState } from "../../ui/feedback/EmptyState.tsx";
import { ScreenBoundary } from "../../ui/feedback/ScreenBoundary.tsx";
import { commonTexts } from "../../words/commonTexts.ts";
import { useWords } from "../../words/SpeechContext.tsx";
import { Measure } from "../measure/Measure.tsx";
import { shellTexts } from "./texts.ts";

/** The screen of a place, with its own boundary: a fault in one leaves the others standing. */
export function Screen({ route }: { readonly route: Route }) {
  const words = useWords(shellTexts);
  const common = useWords(commonTexts);
  return (
    <ScreenBoundary
      key={route.place === "spindle" ? route.spindleId : route.place}
      fallback={(again) => (
        <EmptyState title={words.screenFailed} act={<Button onClick={again}>{common.tryAgain}</Button>}>
          {words.screenFailedWhy}
        </EmptyState>
      )}
    >
      {screenOf(route)}
    </ScreenBoundary>
  );
}

function screenOf(route: Route) {
  switch (route.place) {
    default:
      return <Measure />;
  }
}
