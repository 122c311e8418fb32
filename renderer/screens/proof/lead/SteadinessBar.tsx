import { useWords } from "../../../words/SpeechContext.tsx";
import { leadTexts } from "./leadTexts.ts";
import "./steadiness.css";

/** How still the load stands: full at complete rest; right of the mark it may be taken. The word says the same. */
export function SteadinessBar({
  share,
  steady,
  name,
}: {
  /** 1 at rest, 0.5 at the limit; undefined: too few readings to tell. */
  readonly share: number | undefined;
  readonly steady: boolean;
  readonly name: string;
}) {
  const words = useWords(leadTexts);
  const word = share === undefined ? words.steadyUnknown : steady ? words.steady : words.moving;
  return (
    <div className={steady ? "steadiness steady" : "steadiness"}>
      <span className="word">{word}</span>
      {/* The element of that name draws itself; this one shows the limit too. */}
      {/* biome-ignore lint/a11y/useSemanticElements: as above */}
      <div
        role="meter"
        aria-label={name}
        aria-valuemin={0}
        aria-valuemax={1}
        aria-valuenow={share ?? 0}
        aria-valuetext={word}
      >
        <i style={{ width: `${100 * (share ?? 0)}%` }} />
        <b />
      </div>
    </div>
  );
}
