import { cleanup, fireEvent, render, screen } from "@testing-library/react";
import { useState } from "react";
import { afterEach, describe, expect, it } from "vitest";
import { DateField } from "../../../../renderer/ui/field/DateField.tsx";
import { createSpeech } from "../../../../renderer/words/Speech.ts";
import { SpeechContext } from "../../../../renderer/words/SpeechContext.tsx";

let held: string;

function Held({ first }: { readonly first: string }) {
  const [value, setValue] = useState(first);
  held = value;
  return <DateField label="Fällig" value={value} onText={setValue} />;
}

function shown(first = ""): HTMLInputElement {
  render(
    <SpeechContext value={createSpeech("de", "de-DE")}>
      <Held first={first} />
    </SpeechContext>,
  );
  return screen.getByLabelText<HTMLInputElement>("Fällig");
}

function typed(field: HTMLInputElement, text: string): void {
  fireEvent.focus(field);
  fireEvent.change(field, { target: { value: text } });
}

describe("a field for a day", () => {
  afterEach(cleanup);

  it("shows and takes a day as the reader's language has it, whatever the browser's is", () => {
    const field = shown("2026-11-02");
    expect(field.value).toBe("02.11.2026");
    expect(field.placeholder).toBe("TT.MM.JJJJ");
    typed(field, "3.1.27");
    expect([field.value, held]).toEqual(["3.1.27", "2027-01-03"]);
    fireEvent.blur(field);
    expect(field.value).toBe("03.01.2027");
  });

  it("hands on what it cannot read, and says so once the hand has left: nothing typed passes for an empty field", () => {
    const field = shown();
    typed(field, "31.02.2026");
    expect(held).toBe("31.02.2026");
    expect(field.getAttribute("aria-invalid")).toBeNull();
    fireEvent.blur(field);
    expect(field.getAttribute("aria-invalid")).toBe("true");
    expect(screen.getByRole("alert").textContent).toMatch(/TT\.MM\.JJJJ/);
    typed(field, "");
    fireEvent.blur(field);
    expect(held).toBe("");
    expect(field.getAttribute("aria-invalid")).toBeNull();
  });

  it("takes a day from the browser's calendar", () => {
    const field = shown();
    fireEvent.change(document.querySelector("input[type=date]")!, { target: { value: "2026-05-17" } });
    expect([field.value, held]).toEqual(["17.05.2026", "2026-05-17"]);
  });
});
