// Given to Node by --import: the program believes it was started at one fixed moment, and time goes on from there. The demo
// works then end on the same day each time a picture is taken.
const startedAt = Date.UTC(2026, 10, 16, 9, 0, 0);
const Real = Date;
const offset = startedAt - Real.now();
globalThis.Date = class extends Real {
  constructor(...parts) {
    if (parts.length === 0) super(Real.now() + offset);
    else super(...parts);
  }
  static now() {
    return Real.now() + offset;
  }
};
