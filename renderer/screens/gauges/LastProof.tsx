import type { ProofDrift } from "../../../app/proof/after/driftOfProofs.ts";
import { hrefOf } from "../../state/routeStore.ts";
import { useSpeech, useWords } from "../../words/SpeechContext.tsx";
import { useGaugeProofs } from "../proof/after/useGaugeProofs.ts";
import { judgedTexts } from "../proof/words/proofStateTexts.ts";
import { gaugesTexts } from "./texts.ts";

/** A gauge's last proof in one cell: the day, its class or how it was, its largest uncertainty, and the drift beside it. */
export function LastProof({ gaugeId, provedOn }: { readonly gaugeId: string; readonly provedOn: string | undefined }) {
  const speech = useSpeech();
  const words = useWords(gaugesTexts);
  const judged = useWords(judgedTexts);
  const proofs = useGaugeProofs(gaugeId);
  const last = proofs?.rows[0];
  if (last === undefined) return <>{provedOn === undefined ? "–" : speech.plainDate(provedOn)}</>;
  const about = [
    last.class == null ? judged[last.judged] : words.classIs(last.class),
    last.worstPct == null ? undefined : words.worstIs(speech.number(last.worstPct, 2)),
  ].filter((part) => part !== undefined);
  return (
    <span className="last-proof">
      <span>
        <a href={hrefOf({ place: "proof", proofId: last.proofId })}>{speech.plainDate(last.on)}</a>{" "}
        <small>{about.join(", ")}</small>
      </span>
      {proofs !== undefined && proofs.drift.steps.length > 1 && <DriftSpark drift={proofs.drift} />}
    </span>
  );
}

/** The changes from proof to proof, summed up: whether the gauge wanders. */
function DriftSpark({ drift }: { readonly drift: ProofDrift }) {
  const speech = useSpeech();
  const words = useWords(gaugesTexts);
  let sum = 0;
  const course = [
    0,
    ...drift.steps.map(({ worst }) => {
      sum += worst.relative;
      return sum;
    }),
  ];
  // Half a percent fills the height: noise of a good gauge stays flat.
  const most = Math.max(0.005, ...course.map(Math.abs));
  const x = (i: number) => 4 + (82 * i) / (course.length - 1);
  const y = (share: number) => 14 - 11 * (share / most);
  return (
    <svg
      className="drift-spark"
      width="90"
      height="28"
      viewBox="0 0 90 28"
      role="img"
      aria-label={words.driftIs(speech.percent(sum, 2))}
    >
      <path className="level" d="M0 14h90" />
      <path
        className="course"
        d={course.map((share, i) => `${i === 0 ? "M" : "L"}${x(i).toFixed(1)} ${y(share).toFixed(1)}`).join("")}
      />
      <circle cx={x(course.length - 1)} cy={y(sum)} r="3" />
    </svg>
  );
}
