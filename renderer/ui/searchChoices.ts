type Named = { readonly name: string; readonly about?: string };

/**
 * The choices that hold every word typed, in name or description, whatever the case; those whose name begins with the text
 * come first, else the order stays.
 */
export function searchChoices<C extends Named>(choices: readonly C[], text: string): readonly C[] {
  const sought = text.trim().toLocaleLowerCase();
  if (sought === "") return choices;
  const words = sought.split(/\s+/);
  const fits = choices.filter((choice) => {
    const all = `${choice.name} ${choice.about ?? ""}`.toLocaleLowerCase();
    const starts = all.split(/[^\p{L}\p{N}]+/u);
    // One or two letters are in nearly every text: they must begin a word.
    return words.every((word) =>
      word.length > 2 ? all.includes(word) : starts.some((start) => start.startsWith(word)),
    );
  });
  const rank = (choice: C) => {
    const name = choice.name.toLocaleLowerCase();
    return name === sought ? 0 : name.startsWith(sought) ? 1 : 2;
  };
  return fits.toSorted((a, b) => rank(a) - rank(b));
}
