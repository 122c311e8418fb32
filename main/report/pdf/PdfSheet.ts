import PDFDocument from "pdfkit";
import { type Line, layLines, type Style } from "./layLines.ts";
import { SheetFonts, type Weight } from "./SheetFonts.ts";

export type Paper = "A4" | "Letter";

export type SheetOptions = {
  readonly title: string;
  readonly subject: string;
  readonly paper: Paper;
  /** When it is made: stands in the document's own data. */
  readonly nowMs: number;
  readonly landscape?: boolean;
  /** BCP 47; absent: en. */
  readonly language?: string;
  /** What stands at the foot of every page beside its number, one line or two. */
  readonly footer: string;
  /** Word for "page x of y". */
  readonly pageWords?: (page: number, of: number) => string;
};

/** What pdfkit takes for a tag; its own type is behind by `scope`. */
type TagOptions = PDFKit.Mixins.StructureElementOptions & { readonly scope?: "Column" | "Row" };

/** A place on the page in points, from its upper left corner. */
export type Box = { readonly x: number; readonly y: number; readonly width: number; readonly height: number };

const MARGIN = 51; // 18 mm
const FOOT = 34;
/** Line pitch over type size. */
export const LEADING = 1.3;

export const INK = "#1b1b1b";
export const QUIET = "#595959"; // 7 : 1 on white
export const HAIRLINE = "#9a9a9a";

/**
 * A report's pages: a column that fills from top to bottom, tagged for readers who cannot see it, with embedded fonts
 * (PDF/A-2a as far as pdfkit goes), page numbers put in at the end. Everything drawn is either content of a tag or an
 * artifact.
 */
export class PdfSheet {
  readonly doc: PDFKit.PDFDocument;
  readonly fonts: SheetFonts;
  readonly #root: PDFKit.PDFStructureElement;
  readonly #options: SheetOptions;
  readonly #done: Promise<Buffer>;
  /** Where the next thing goes. */
  y = MARGIN;

  constructor(options: SheetOptions) {
    this.#options = options;
    this.doc = new PDFDocument({
      size: options.paper === "A4" ? "A4" : "LETTER",
      layout: options.landscape === true ? "landscape" : "portrait",
      margin: 0, // nothing flows by itself
      bufferPages: true,
      tagged: true,
      displayTitle: true,
      lang: options.language ?? "en",
      pdfVersion: "1.7",
      subset: "PDF/A-2a",
      info: {
        Title: options.title,
        Subject: options.subject,
        Creator: "Holdfast",
        Producer: "Holdfast",
        CreationDate: new Date(options.nowMs),
        ModDate: new Date(options.nowMs),
      },
    });
    this.#done = collected(this.doc);
    this.fonts = new SheetFonts(this.doc);
    this.#root = this.doc.struct("Document");
    this.doc.addStructure(this.#root);
  }

  get language(): string {
    return this.#options.language ?? "en";
  }

  get left(): number {
    return MARGIN;
  }

  get width(): number {
    return this.doc.page.width - 2 * MARGIN;
  }

  get bottom(): number {
    return this.doc.page.height - MARGIN - FOOT;
  }

  /** A new page unless so much room is left on this one. */
  need(height: number): void {
    if (this.y + height > this.bottom && this.y > MARGIN) this.newPage();
  }

  newPage(): void {
    this.doc.addPage();
    this.y = MARGIN;
  }

  space(height: number): void {
    this.y += height;
  }

  /** Lines of a text for a width; what the typeface lacks is written in other characters. */
  lines(text: string, style: Style, width: number): Line[] {
    return layLines(this.fonts, text, style, width);
  }

  /** Draws one line. For use inside a tag's closure or an artifact. */
  drawLine(
    { runs, width }: Line,
    at: { x: number; y: number; size: number; align?: "right" | undefined; within?: number; color?: string },
  ) {
    let x = at.align === "right" ? at.x + (at.within ?? 0) - width : at.x;
    this.doc.fillColor(at.color ?? INK);
    for (const run of runs) {
      this.doc.font(run.font).fontSize(at.size).text(run.text, x, at.y, { lineBreak: false });
      x += run.width;
    }
  }

  /** A tag under the document, or under another tag. Its closures draw at once. */
  tag(type: string, options: TagOptions = {}, under?: PDFKit.PDFStructureElement) {
    const element = this.doc.struct(type, options);
    (under ?? this.#root).add(element);
    return element;
  }

  /** What is there for the eye alone. */
  artifact(draw: () => void): void {
    this.doc.markContent("Artifact", { type: "Layout" });
    draw();
    this.doc.endMarkedContent();
  }

  text(
    type: "H1" | "H2" | "P",
    text: string,
    { size, weight, color = INK }: { size: number; weight: Weight; color?: string },
  ): void {
    const lines = this.lines(text, { size, weight }, this.width);
    const pitch = size * LEADING;
    const element = this.tag(type);
    for (let at = 0; at < lines.length; ) {
      this.need(pitch);
      const fits = Math.max(1, Math.floor((this.bottom - this.y) / pitch));
      element.add(() => {
        for (const line of lines.slice(at, at + fits)) {
          this.drawLine(line, { x: this.left, y: this.y, size, color });
          this.y += pitch;
        }
      });
      at += fits;
    }
    element.end();
  }

  title(text: string, under?: string): void {
    this.text("H1", text, { size: 20, weight: "bold" });
    if (under !== undefined) this.text("P", under, { size: 11, weight: "regular", color: QUIET });
    this.space(8);
  }

  /** @param together  room that must be left under it, so that no heading stands alone at a page's end */
  heading(text: string, together = 60): void {
    this.space(12);
    this.need(20 + together);
    this.text("H2", text, { size: 13, weight: "bold" });
    this.space(3);
  }

  paragraph(text: string, look: { quiet?: boolean; bold?: boolean; size?: number } = {}): void {
    const color = look.quiet === true ? QUIET : INK;
    this.text("P", text, { size: look.size ?? 10, weight: look.bold === true ? "bold" : "regular", color });
    this.space(3);
  }

  /** Numbers the pages and closes the document. Nothing may be added after. */
  async finish(): Promise<Buffer> {
    this.#root.end();
    const { start, count } = this.doc.bufferedPageRange();
    for (let i = 0; i < count; i += 1) {
      this.doc.switchToPage(start + i);
      this.#foot(i + 1, count);
    }
    this.doc.end();
    return this.#done;
  }

  #foot(page: number, of: number): void {
    const { footer, pageWords = (n, all) => `page ${n} of ${all}` } = this.#options;
    const style: Style = { size: 8, weight: "regular" };
    const y = this.doc.page.height - MARGIN - FOOT + 12;
    this.doc.markContent("Artifact", { type: "Pagination" });
    this.doc
      .moveTo(this.left, y - 5)
      .lineTo(this.left + this.width, y - 5)
      .lineWidth(0.5)
      .stroke(HAIRLINE);
    for (const [i, line] of this.lines(footer, style, this.width - 90)
      .slice(0, 3)
      .entries())
      this.drawLine(line, { x: this.left, y: y + i * 10, size: 8, color: QUIET });
    const [number] = this.lines(pageWords(page, of), style, 90);
    this.drawLine(number!, { x: this.left, y, size: 8, color: QUIET, align: "right", within: this.width });
    this.doc.endMarkedContent();
  }
}

function collected(doc: PDFKit.PDFDocument): Promise<Buffer> {
  const chunks: Buffer[] = [];
  return new Promise((done, fail) => {
    doc.on("data", (chunk: Buffer) => chunks.push(chunk));
    doc.on("end", () => done(Buffer.concat(chunks)));
    doc.on("error", fail);
  });
}
