import { siteGravity } from "../../../../app/proof/reference/siteGravity.ts";
import { Choices } from "../../../ui/field/Choices.tsx";
import { TextField } from "../../../ui/field/TextField.tsx";
import { parseNumber } from "../../../words/parseNumber.ts";
import { useSpeech, useWords } from "../../../words/SpeechContext.tsx";
import type { ReferenceFields } from "./ReferenceFields.ts";
import { referenceTexts } from "./referenceTexts.ts";

/** Local gravity: known, or worked out from latitude and height, shown as it comes out. */
export function GravityFields({ draft, errorAt, onDraft }: ReferenceFields) {
  const speech = useSpeech();
  const words = useWords(referenceTexts);
  const [latitude, height] = [parseNumber(draft.latitude), parseNumber(draft.height)];
  const inRange =
    typeof latitude === "number" &&
    typeof height === "number" &&
    Math.abs(latitude) <= 90 &&
    height >= -500 &&
    height <= 9000;
  const found = inRange ? siteGravity(latitude, height) : undefined;
  const cell = (name: "gravity" | "gravityU" | "latitude" | "height") => ({
    inputMode: "decimal" as const,
    value: draft[name],
    onText: (text: string) => onDraft({ [name]: text }),
    error: errorAt(name),
  });
  return (
    <>
      <Choices
        label={words.gravity}
        value={draft.gravityFrom}
        options={(["place", "measured"] as const).map((value) => ({ value, label: words[value] }))}
        onChoose={(gravityFrom) => onDraft({ gravityFrom })}
      />
      <div className="fields">
        {draft.gravityFrom === "measured" ? (
          <>
            <TextField label={words.gravityValue} {...cell("gravity")} />
            <TextField label={words.gravityU} {...cell("gravityU")} />
          </>
        ) : (
          <>
            <TextField label={words.latitude} hint={words.latitudeHint} {...cell("latitude")} />
            <TextField label={words.height} {...cell("height")} />
          </>
        )}
      </div>
      {draft.gravityFrom === "place" && found !== undefined && (
        <p className="small">{words.gravityIs(speech.number(found.value, 5), speech.number(2 * found.standard, 5))}</p>
      )}
    </>
  );
}
