/**
 * Names of the 33 control characters; the position is the code, DEL stands last.
 * @see ECMA-6 (ISO/IEC 646), table of control characters in the C0 set of ECMA-48
 */
export const controlNames = [
  "NUL",
  "SOH",
  "STX",
  "ETX",
  "EOT",
  "ENQ",
  "ACK",
  "BEL",
  "BS",
  "HT",
  "LF",
  "VT",
  "FF",
  "CR",
  "SO",
  "SI",
  "DLE",
  "DC1",
  "DC2",
  "DC3",
  "DC4",
  "NAK",
  "SYN",
  "ETB",
  "CAN",
  "EM",
  "SUB",
  "ESC",
  "FS",
  "GS",
  "RS",
  "US",
  "DEL",
] as const;

export type ControlName = (typeof controlNames)[number];

/** The byte of a control character. */
export const controlCode = (name: ControlName): number => (name === "DEL" ? 0x7f : controlNames.indexOf(name));
