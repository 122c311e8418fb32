import { useState } from "react";
import { commonTexts } from "../../words/commonTexts.ts";
import { useWords } from "../../words/SpeechContext.tsx";
import { actIcons } from "../actIcons.ts";
import { Field, type FieldProps } from "./Field.tsx";
import "../button.css";

/** A file of this computer, chosen or dropped here. The same one can be chosen again. */
export function FileField({
  label,
  hint,
  error,
  accept,
  onFile,
}: FieldProps & { readonly accept: string; readonly onFile: (file: File) => void }) {
  const words = useWords(commonTexts);
  const [name, setName] = useState<string>();
  return (
    <Field label={label} hint={hint} error={error}>
      {(wiring) => (
        <span className="file">
          <span className="button plain" aria-hidden="true">
            <actIcons.takeIn size={18} strokeWidth={2} />
            <span>{words.chooseFile}</span>
          </span>
          <span aria-hidden="true">{name ?? words.noFile}</span>
          <input
            {...wiring}
            type="file"
            accept={accept}
            onChange={(e) => {
              const file = e.target.files?.[0];
              e.target.value = "";
              if (file === undefined) return;
              setName(file.name);
              onFile(file);
            }}
          />
        </span>
      )}
    </Field>
  );
}
