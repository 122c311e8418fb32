import { controlNames } from "./controlCharacters.ts";

/** A line for the eye: control characters by name (<STX>), bytes beyond seven bits as hexadecimal (<E4>). */
export function shownLine(bytes: Uint8Array, from: number, to: number): string {
  let text = "";
  for (let i = from; i < to; i += 1) {
    const byte = bytes[i]!;
    if (byte >= 0x20 && byte < 0x7f) text += String.fromCharCode(byte);
    else text += `<${byte === 0x7f ? "DEL" : (controlNames[byte] ?? byte.toString(16).toUpperCase())}>`;
  }
  return text;
}
