/** What a drawing is made with: a canvas, or a writer of SVG. Only what both can do alike. */
export type Pen = Pick<
  CanvasRenderingContext2D,
  | "strokeStyle"
  | "fillStyle"
  | "lineWidth"
  | "lineJoin"
  | "lineCap"
  | "globalAlpha"
  | "font"
  | "textAlign"
  | "save"
  | "restore"
  | "translate"
  | "scale"
  | "setLineDash"
  | "beginPath"
  | "closePath"
  | "moveTo"
  | "lineTo"
  | "rect"
  | "fillRect"
  | "strokeRect"
  | "fillText"
  | "strokeText"
> & {
  /** Of what has been drawn since `beginPath`. */
  fill(): void;
  stroke(): void;
  clip(): void;
  /** Whole circles only. */
  arc(x: number, y: number, radius: number, from: number, to: number): void;
  measureText(text: string): { readonly width: number };
};
