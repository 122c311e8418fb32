import type { Route } from "../../state/routeStore.ts";
import { FactorScreen } from "./adapter/FactorScreen.tsx";
import { AffectedScreen } from "./after/AffectedScreen.tsx";
import { GaugeScreen } from "./after/GaugeScreen.tsx";
import { ProvingScreen } from "./lead/ProvingScreen.tsx";
import { PlanScreen } from "./plan/PlanScreen.tsx";
import { ProofScreen } from "./result/ProofScreen.tsx";

/** The places that belong to a proof; read when the first of them is wanted. */
export function ProofPlaces({
  route,
}: {
  readonly route: Extract<Route, { place: "gauge" | "proving" | "proof" | "factor" }>;
}) {
  switch (route.place) {
    case "gauge":
      return route.part === "prove" ? <PlanScreen gaugeId={route.gaugeId} /> : <GaugeScreen gaugeId={route.gaugeId} />;
    case "proving":
      return <ProvingScreen />;
    case "proof":
      return route.part === "affected" ? (
        <AffectedScreen proofId={route.proofId} />
      ) : (
        <ProofScreen proofId={route.proofId} />
      );
    case "factor":
      return <FactorScreen adapterId={route.adapterId} />;
  }
}
