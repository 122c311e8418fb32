import { cleanup, fireEvent, render, screen } from "@testing-library/react";
import { useState } from "react";
import { afterEach, describe, expect, it } from "vitest";
import { TextField } from "../../../../renderer/ui/field/TextField.tsx";
import { createSpeech } from "../../../../renderer/words/Speech.ts";
import { SpeechContext } from "../../../../renderer/words/SpeechContext.tsx";

let held: string;

function Held({ first, inputMode }: { readonly first: string; readonly inputMode: "decimal" | "text" }) {
  const [value, setValue] = useState(first);
  held = value;
  return <TextField label="Letzte Stelle" inputMode={inputMode} value={value} onText={setValue} />;
}

function shown(first: string, locale = "de", inputMode: "decimal" | "text" = "decimal"): HTMLInputElement {
  render(
    <SpeechContext value={createSpeech(locale.startsWith("de") ? "de" : "en", locale)}>
      <Held first={first} inputMode={inputMode} />
    </SpeechContext>,
  );
  return screen.getByLabelText<HTMLInputElement>("Letzte Stelle");
}

describe("a field for a figure", () => {
  afterEach(cleanup);

  it.each([
    ["de", "0.01", "0,01"],
    ["de", "-3.5", "-3,5"],
    ["de", "30", "30"],
    ["en-GB", "0.01", "0.01"],
  ])("in %s shows %s as %s", (locale, value, text) => {
    expect(shown(value, locale).value).toBe(text);
    expect(held).toBe(value);
  });

  it("leaves what is being typed as it is typed, and shows it in the reader's form afterwards", () => {
    const field = shown("");
    for (const text of ["1.", "1.2", "1.234", "1.234."]) {
      fireEvent.change(field, { target: { value: text } });
      expect(field.value).toBe(text);
    }
    fireEvent.blur(field);
    expect([field.value, held]).toEqual(["1.234.", "1.234."]); // two points are no decimal point
    fireEvent.change(field, { target: { value: "17.92" } });
    fireEvent.blur(field);
    expect([field.value, held]).toEqual(["17,92", "17.92"]);
  });

  it("touches no text that is not a figure alone", () => {
    expect(shown("v1.2", "de").value).toBe("v1.2");
    cleanup();
    expect(shown("1.2", "de", "text").value).toBe("1.2");
  });
});
