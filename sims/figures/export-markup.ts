import { breakLines, type MeasureText } from './export-lines.ts';

/** Stands under every picture that leaves the course. */
export const CAUTION =
  'For education only. Not for diagnosing, planning or choosing treatment for a person. ' +
  'A simplified model; its limits are stated where it is used.';

/** What goes round a drawing when it leaves the page. */
export interface Caption {
  readonly title: string;
  /** "Lengths in mm, forces in N" */
  readonly units: string;
  /** What computed the drawing, in words. */
  readonly model: string;
  /** The setting drawn, in words. */
  readonly setting?: string | undefined;
  readonly sources: readonly string[];
}

/** A drawing already freed of the page: no variables, no classes, no handlers. */
export interface Drawing {
  /** What stands between `<svg>` and `</svg>`. */
  readonly inner: string;
  readonly viewBox: Box;
}

export interface Dress {
  readonly ground: string;
  readonly ink: string;
  readonly inkSoft: string;
  readonly fontFamily: string;
  /** `@font-face` rules with the fonts inside, or '' to rely on the reader's own. */
  readonly fontFaces: string;
  readonly measure: MeasureText;
}

/** A rectangle of the picture, in its CSS pixels. */
export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

const MARGIN = 12;
const PAD = 14;
const LEAST_WIDTH = 720;
const TITLE_SIZE = 24;
const TEXT_SIZE = 15;

/**
 * A figure as one SVG file: the title in a strip above, the drawing, and a foot with setting, units, model, sources and
 * the caution, framed as a sheet.
 *
 * @returns the file's text, its size in CSS pixels, and where in it the title's first line stands
 */
export function figureMarkup(
  drawing: Drawing,
  caption: Caption,
  dress: Dress,
): { markup: string; width: number; height: number; titleBox: Box } {
  const { viewBox } = drawing;
  const inside = Math.max(LEAST_WIDTH, viewBox.width);
  const drawingHeight = (viewBox.height * inside) / viewBox.width;
  const width = inside + 2 * MARGIN;
  const room = inside - 2 * PAD;

  const title = paragraph(caption.title, TITLE_SIZE, 700, dress.ink);
  const foot = footEntries(caption).map((entry) => paragraph(entry, TEXT_SIZE, 450, dress.inkSoft));

  const strip = lettering([title], MARGIN + PAD, MARGIN + PAD - 4, room, dress);
  const drawingTop = strip.bottom + PAD - 4;
  const drawingBottom = drawingTop + drawingHeight;
  const below = lettering(foot, MARGIN + PAD, drawingBottom + PAD - 4, room, dress);
  const height = below.bottom + PAD - 4 + MARGIN;

  const frame =
    `<path d="M${MARGIN} ${MARGIN}H${n(width - MARGIN)}V${n(height - MARGIN)}H${MARGIN}Z` +
    `M${MARGIN} ${n(drawingTop)}H${n(width - MARGIN)}M${MARGIN} ${n(drawingBottom)}H${n(width - MARGIN)}" ` +
    `fill="none" stroke="${dress.ink}" stroke-width="1.5"/>`;
  const { x, y } = viewBox;
  const markup =
    `<svg xmlns="http://www.w3.org/2000/svg" width="${n(width)}" height="${n(height)}" ` +
    `viewBox="0 0 ${n(width)} ${n(height)}" color="${dress.ink}" font-family="${escapeXml(dress.fontFamily)}">` +
    `<title>${escapeXml(caption.title)}</title>` +
    `<desc>${escapeXml(footEntries(caption).join(' '))}</desc>` +
    (dress.fontFaces === '' ? '' : `<style>${escapeXml(dress.fontFaces)}</style>`) +
    `<rect width="100%" height="100%" fill="${dress.ground}"/>` +
    `<svg x="${MARGIN}" y="${n(drawingTop)}" width="${n(inside)}" height="${n(drawingHeight)}" ` +
    `viewBox="${n(x)} ${n(y)} ${n(viewBox.width)} ${n(viewBox.height)}">${drawing.inner}</svg>` +
    frame +
    strip.markup +
    below.markup +
    '</svg>';
  const titleBox = {
    x: MARGIN + PAD,
    y: MARGIN + PAD - 4,
    width: Math.min(room, 4 * TITLE_SIZE),
    height: TITLE_SIZE * 1.3,
  };
  return { markup, width, height, titleBox };
}

/** Replaces every `var(--token)` by what `valueOf` says it is now; a fallback inside the var() is dropped. */
export function resolveVariables(markup: string, valueOf: (token: string) => string): string {
  return markup.replace(/var\(\s*(--[\w-]+)\s*(?:,[^()]*)?\)/g, (_, token: string) =>
    escapeXml(valueOf(token)),
  );
}

/** Control characters other than tab and line ends, lone halves of a pair, and the two non-characters. */
const NOT_IN_XML = /[^\P{Cc}\t\n\r]|\p{Cs}|[\ufffe\uffff]/gu;

export function escapeXml(text: string): string {
  return text
    .replace(NOT_IN_XML, '')
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;');
}

function footEntries({ setting, units, model, sources }: Caption): readonly string[] {
  return [
    ...(setting === undefined || setting === '' ? [] : [`Setting: ${setting}`]),
    `Units: ${units}`,
    `Computed by: ${model}`,
    `Sources: ${sources.length === 0 ? 'derived, no measured data' : sources.join('; ')}`,
    CAUTION,
  ];
}

interface Paragraph {
  readonly text: string;
  readonly size: number;
  readonly weight: number;
  readonly colour: string;
}

function paragraph(text: string, size: number, weight: number, colour: string): Paragraph {
  return { text, size, weight, colour };
}

/** Paragraphs set in lines from `top` down; `bottom` is where the last one ends. */
function lettering(
  paragraphs: readonly Paragraph[],
  x: number,
  top: number,
  room: number,
  { measure }: Dress,
): { markup: string; bottom: number } {
  let y = top;
  let markup = '';
  for (const { text, size, weight, colour } of paragraphs) {
    for (const line of breakLines(text, room, (part) => measure(part, size, weight))) {
      y += size * 1.3;
      markup +=
        `<text x="${n(x)}" y="${n(y - size * 0.3)}" font-size="${size}" font-weight="${weight}" ` +
        `fill="${colour}">${escapeXml(line)}</text>`;
    }
  }
  return { markup, bottom: y };
}

function n(value: number): string {
  return String(Math.round(value * 100) / 100);
}
