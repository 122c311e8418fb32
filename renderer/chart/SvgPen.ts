import type { Pen } from "./Pen.ts";

type Paint = Pen["strokeStyle"];
type Look = {
  strokeStyle: Paint;
  fillStyle: Paint;
  lineWidth: number;
  lineJoin: CanvasLineJoin;
  lineCap: CanvasLineCap;
  globalAlpha: number;
  font: string;
  textAlign: CanvasTextAlign;
  dash: readonly number[];
  clip: string | undefined;
  x: number;
  y: number;
  scale: number;
};

/** A pen that writes SVG: the same drawing functions then give a picture that stays sharp at any size. */
export class SvgPen implements Pen {
  strokeStyle: Paint = "#000000";
  fillStyle: Paint = "#000000";
  lineWidth = 1;
  lineJoin: CanvasLineJoin = "miter";
  lineCap: CanvasLineCap = "butt";
  globalAlpha = 1;
  font = "13px sans-serif";
  textAlign: CanvasTextAlign = "left";
  readonly #measure: (text: string, font: string) => number;
  readonly #marks: string[] = [];
  readonly #clips: string[] = [];
  readonly #kept: Look[] = [];
  #dash: readonly number[] = [];
  #clip: string | undefined;
  #x = 0;
  #y = 0;
  #scale = 1;
  #path = "";

  /** @param measure  width of a text in a font, in pixels: SVG itself cannot be asked while it is written */
  constructor(measure: (text: string, font: string) => number) {
    this.#measure = measure;
  }

  /** The whole picture as a file's text. */
  document(width: number, height: number, title: string): string {
    return [
      `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}" role="img">`,
      `<title>${escaped(title)}</title>`,
      this.#clips.length === 0 ? "" : `<defs>${this.#clips.join("")}</defs>`,
      ...this.#marks,
      "</svg>\n",
    ].join("\n");
  }

  save(): void {
    const { strokeStyle, fillStyle, lineWidth, lineJoin, lineCap, globalAlpha, font, textAlign } = this;
    const look = { strokeStyle, fillStyle, lineWidth, lineJoin, lineCap, globalAlpha, font, textAlign };
    this.#kept.push({ ...look, dash: this.#dash, clip: this.#clip, x: this.#x, y: this.#y, scale: this.#scale });
  }

  restore(): void {
    const kept = this.#kept.pop();
    if (kept === undefined) return;
    const { dash, clip, x, y, scale, ...look } = kept;
    Object.assign(this, look);
    this.#dash = dash;
    this.#clip = clip;
    this.#x = x;
    this.#y = y;
    this.#scale = scale;
  }

  translate(x: number, y: number): void {
    this.#x += x * this.#scale;
    this.#y += y * this.#scale;
  }

  scale(x: number, y: number): void {
    if (x !== y) throw new RangeError("SvgPen scales both ways alike");
    this.#scale *= x;
  }

  setLineDash(dash: Iterable<number>): void {
    this.#dash = [...dash];
  }

  beginPath(): void {
    this.#path = "";
  }

  closePath(): void {
    this.#path += "Z";
  }

  moveTo(x: number, y: number): void {
    this.#path += `M${this.#at(x, y)}`;
  }

  lineTo(x: number, y: number): void {
    this.#path += `${this.#path === "" ? "M" : "L"}${this.#at(x, y)}`;
  }

  rect(x: number, y: number, width: number, height: number): void {
    this.#path += `M${this.#at(x, y)}L${this.#at(x + width, y)}L${this.#at(x + width, y + height)}L${this.#at(x, y + height)}Z`;
  }

  arc(x: number, y: number, radius: number): void {
    const r = short(radius * this.#scale);
    const arc = `A${r} ${r} 0 1 1 `;
    this.#path += `M${this.#at(x - radius, y)}${arc}${this.#at(x + radius, y)}${arc}${this.#at(x - radius, y)}Z`;
  }

  fill(): void {
    this.#put(`<path d="${this.#path}"${paint("fill", this.fillStyle, this.globalAlpha)}`);
  }

  stroke(): void {
    this.#put(`<path d="${this.#path}" fill="none"${this.#line()}`);
  }

  clip(): void {
    const id = `clip${this.#clips.length + 1}`;
    this.#clips.push(`<clipPath id="${id}"><path d="${this.#path}"/></clipPath>`);
    this.#clip = id;
  }

  fillRect(x: number, y: number, width: number, height: number): void {
    this.beginPath();
    this.rect(x, y, width, height);
    this.fill();
  }

  strokeRect(x: number, y: number, width: number, height: number): void {
    this.beginPath();
    this.rect(x, y, width, height);
    this.stroke();
  }

  fillText(text: string, x: number, y: number): void {
    this.#text(text, x, y, paint("fill", this.fillStyle, this.globalAlpha));
  }

  strokeText(text: string, x: number, y: number): void {
    this.#text(text, x, y, ` fill="none"${this.#line()}`);
  }

  measureText(text: string): { readonly width: number } {
    return { width: this.#measure(text, this.font) };
  }

  #at(x: number, y: number): string {
    return `${short(this.#x + x * this.#scale)} ${short(this.#y + y * this.#scale)}`;
  }

  #line(): string {
    const dash = this.#dash.length === 0 ? "" : ` stroke-dasharray="${this.#dash.map((d) => short(d * this.#scale))}"`;
    return `${paint("stroke", this.strokeStyle, this.globalAlpha)} stroke-width="${short(this.lineWidth * this.#scale)}" stroke-linejoin="${this.lineJoin}" stroke-linecap="${this.lineCap}"${dash}`;
  }

  /** As long as measured, so that a viewer without the font writes over nothing. */
  #text(text: string, x: number, y: number, look: string): void {
    const [, weight = "400", size = "13", family = "sans-serif"] = /^(\d+)? ?([\d.]+)px (.*)$/.exec(this.font) ?? [];
    const anchor = { center: "middle", right: "end", end: "end", left: "start", start: "start" }[this.textAlign];
    const [left, top] = this.#at(x, y).split(" ");
    this.#put(
      `<text x="${left}" y="${top}" font-family="${escaped(family)}" font-size="${size}" font-weight="${weight}" text-anchor="${anchor}" textLength="${short(this.#measure(text, this.font))}" lengthAdjust="spacingAndGlyphs"${look}`,
      `${escaped(text)}</text>`,
    );
  }

  #put(open: string, rest?: string): void {
    const clip = this.#clip === undefined ? "" : ` clip-path="url(#${this.#clip})"`;
    this.#marks.push(rest === undefined ? `${open}${clip}/>` : `${open}${clip}>${rest}`);
  }
}

const short = (value: number) => String(Math.round(value * 100) / 100);

/** Old viewers know no colours of eight digits: the last two become an opacity. */
function paint(what: "fill" | "stroke", style: Paint, alpha: number): string {
  const colour = String(style);
  const own = colour.length === 9 ? Number.parseInt(colour.slice(7), 16) / 255 : 1;
  const opacity = own * alpha;
  return ` ${what}="${colour.slice(0, 7)}"${opacity < 1 ? ` ${what}-opacity="${short(opacity)}"` : ""}`;
}

const escaped = (text: string) =>
  text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;").replaceAll('"', "&quot;");
