/** Maximum permissible error, without sign, applied to both sides. */
export type PermissibleError =
  | { readonly kind: "relative"; readonly fraction: number }
  | { readonly kind: "ofGreatest"; readonly fraction: number }
  /** In the reference's unit. */
  | { readonly kind: "absolute"; readonly force: number };

/** The error permitted at a load, in the reference's unit. */
export function permissibleAt(mpe: PermissibleError, reference: number, greatest: number): number {
  switch (mpe.kind) {
    case "relative":
      return mpe.fraction * Math.abs(reference);
    case "ofGreatest":
      return mpe.fraction * Math.abs(greatest);
    case "absolute":
      return mpe.force;
  }
}
