import { Button } from "../../../ui/Button.tsx";
import { Choices } from "../../../ui/field/Choices.tsx";
import { useWords } from "../../../words/SpeechContext.tsx";
import { trendTexts } from "./trendTexts.ts";

export type Axis = "date" | "counter";

/** What can be done with the trend: other axis, nearer, as a table, as a file. */
export function TrendTools({
  axis,
  onAxis,
  hasCounter,
  isTable,
  onTable,
  isZoomed,
  onZoom,
  onSave,
}: {
  readonly axis: Axis;
  readonly onAxis: (axis: Axis) => void;
  readonly hasCounter: boolean;
  readonly isTable: boolean;
  readonly onTable: () => void;
  readonly isZoomed: boolean;
  /** Under 1: nearer; undefined: all. */
  readonly onZoom: (factor: number | undefined) => void;
  readonly onSave: (kind: "png" | "svg") => void;
}) {
  const words = useWords(trendTexts);
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset is for what is sent; these are acts on a picture
    <div className="tools" role="group" aria-label={words.tools}>
      {hasCounter && (
        <Choices
          label={words.axis}
          hideLabel
          value={axis}
          options={[
            { value: "date", label: words.axisDate },
            { value: "counter", label: words.axisCounter },
          ]}
          onChoose={onAxis}
        />
      )}
      {!isTable && (
        <span className="row">
          <Button aria-label={words.nearer} onClick={() => onZoom(0.5)}>
            +
          </Button>
          <Button aria-label={words.farther} disabled={!isZoomed} onClick={() => onZoom(2)}>
            −
          </Button>
          <Button kind="quiet" disabled={!isZoomed} onClick={() => onZoom(undefined)}>
            {words.showAll}
          </Button>
        </span>
      )}
      <span className="row last">
        <Button kind="quiet" aria-pressed={isTable} onClick={onTable}>
          {words.asTable}
        </Button>
        <Button kind="quiet" icon="save" aria-label={words.savePng} onClick={() => onSave("png")}>
          PNG
        </Button>
        <Button kind="quiet" icon="save" aria-label={words.saveSvg} onClick={() => onSave("svg")}>
          SVG
        </Button>
      </span>
    </div>
  );
}
