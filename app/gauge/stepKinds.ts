/**
 * What one field does to the line, for the reading loop's switch. Single constants, not members of one object: only
 * these does the engine fold into the code, and the loop runs for every field of every line.
 */
export const BYTE_STEP = 0;
export const TEXT_STEP = 1;
export const BLANKS_STEP = 2;
export const STATUS_STEP = 3;
export const FORCE_STEP = 4;
export const UNIT_STEP = 5;
export const DIGITS_STEP = 6;
export const TIME_STEP = 7;
export const CLOCK_STEP = 8;
export const NUMBER_STEP = 9;
export const LETTERS_STEP = 10;
export const HEX_STEP = 11;
export const DATE_STEP = 12;
export const ANY_STEP = 13;
export const CHECKSUM_STEP = 14;
