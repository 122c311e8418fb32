/**
 * Goes through the start tags of the given local names, in order, without building a tree: what stands between them is
 * not looked at.
 * @param take  gets the local name, the text of the attributes for `attribute`, and whether the tag closes itself
 * @returns  false when one of them is not well formed, so that another reader could take it for something else
 */
export function eachTag(
  xml: string,
  names: readonly string[],
  take: (name: string, attributes: string, empty: boolean) => void,
): boolean {
  const some = names.join("|");
  const whole = new RegExp(
    `<(?:[\\w.-]+:)?(${some})((?:\\s+[\\w:.-]+\\s*=\\s*(?:"[^"<]*"|'[^'<]*'))*)\\s*(/?)>|<(?:[\\w.-]+:)?(?:${some})(?=[\\s/>])`,
    "g",
  );
  for (const [, name, attributes = "", slash] of xml.matchAll(whole)) {
    if (name === undefined) return false;
    take(name, attributes, slash === "/");
  }
  return true;
}

/** One attribute out of the text of all, by its local name, entities resolved; undefined: it is not there. */
export function attribute(attributes: string, name: string): string | undefined {
  for (const [, found = "", double, single] of attributes.matchAll(/([\w:.-]+)\s*=\s*(?:"([^"]*)"|'([^']*)')/g)) {
    if (found === name || (found.endsWith(`:${name}`) && !found.startsWith("xmlns:")))
      return resolved(double ?? single ?? "");
  }
  return undefined;
}

const named: Readonly<Record<string, string>> = { amp: "&", lt: "<", gt: ">", quot: '"', apos: "'" };

function resolved(text: string): string {
  if (!text.includes("&")) return text;
  return text.replace(/&(?:#(\d{1,7})|#x([\da-f]{1,6})|(\w+));/gi, (whole, decimal, hex, name) => {
    if (name !== undefined) return named[String(name)] ?? whole;
    const code = hex === undefined ? Number(decimal) : Number.parseInt(String(hex), 16);
    return code <= 0x10ffff ? String.fromCodePoint(code) : whole;
  });
}
