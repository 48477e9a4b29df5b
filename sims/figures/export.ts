import greekFont from '@fontsource-variable/sofia-sans-semi-condensed/files/sofia-sans-semi-condensed-greek-wght-normal.woff2?url';
import latinFont from '@fontsource-variable/sofia-sans-semi-condensed/files/sofia-sans-semi-condensed-latin-wght-normal.woff2?url';
import { csvText, type Table } from './csv.ts';
import { guessedWidth, type MeasureText } from './export-lines.ts';
import { figureMarkup, resolveVariables, type Box, type Caption } from './export-markup.ts';

/** The family's name inside an exported file, apart from any font of the reader's. */
const FAMILY = 'Sofia Sans Semi Condensed Variable';
const PIXELS_PER_CSS_PIXEL = 2;
const FONT_WAIT = 60;
const FONT_TRIES = 40;

/** A drawing on the page as an SVG file of its own, in the colours it has now, its font inside. */
export async function svgFile(svg: SVGSVGElement, caption: Caption): Promise<Blob> {
  const { markup } = await selfContained(svg, caption);
  return new Blob([markup], { type: 'image/svg+xml' });
}

/**
 * A drawing on the page as a PNG, two pixels to the CSS pixel.
 *
 * @throws Error where the browser cannot draw it
 */
export async function pngFile(svg: SVGSVGElement, caption: Caption): Promise<Blob> {
  const { markup, width, height, titleBox } = await selfContained(svg, caption);
  const address = URL.createObjectURL(new Blob([markup], { type: 'image/svg+xml' }));
  try {
    const image = new Image();
    image.src = address;
    await image.decode();
    const canvas = document.createElement('canvas');
    canvas.width = Math.round(width * PIXELS_PER_CSS_PIXEL);
    canvas.height = Math.round(height * PIXELS_PER_CSS_PIXEL);
    await drawLettered(image, canvas, titleBox);
    return await new Promise((resolve, reject) => {
      canvas.toBlob((blob) => {
        if (blob === null) reject(new Error('The browser made no picture.'));
        else resolve(blob);
      }, 'image/png');
    });
  } finally {
    URL.revokeObjectURL(address);
  }
}

/**
 * Draws a picture once its lettering is there. A browser starts on the fonts inside a picture when it first draws it,
 * calls the picture ready before they are, and leaves its letters out meanwhile: so look whether the title has come.
 */
async function drawLettered(
  image: HTMLImageElement,
  canvas: HTMLCanvasElement,
  title: Box,
): Promise<void> {
  const context = canvas.getContext('2d', { willReadFrequently: true });
  if (context === null) throw new Error('The browser gives no canvas to draw on.');
  const scale = PIXELS_PER_CSS_PIXEL;
  const hasTitle = (): boolean => {
    const { data } = context.getImageData(
      title.x * scale,
      title.y * scale,
      title.width * scale,
      title.height * scale,
    );
    return data.some((value, i) => value !== data[i % 4]);
  };
  for (let tries = 0; tries < FONT_TRIES; tries += 1) {
    const wasThere = tries > 0 && hasTitle();
    context.clearRect(0, 0, canvas.width, canvas.height);
    context.drawImage(image, 0, 0, canvas.width, canvas.height);
    // Once more after the title has come, for a second font that came with it.
    if (wasThere) return;
    await new Promise((resolve) => {
      setTimeout(resolve, FONT_WAIT);
    });
  }
}

export function csvFile(table: Table): Blob {
  return new Blob([csvText(table)], { type: 'text/csv;charset=utf-8' });
}

/** Hands a file to the visitor under the given name. */
export function saveFile(file: Blob, name: string): void {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(file);
  link.download = name;
  link.click();
  // The download reads the address after this turn of the event loop.
  setTimeout(() => {
    URL.revokeObjectURL(link.href);
  }, 10_000);
}

async function selfContained(svg: SVGSVGElement, caption: Caption) {
  const valueOf = tokenReader(svg);
  const inner = resolveVariables(strippedMarkup(svg), valueOf);
  const { x, y, width, height } = svg.viewBox.baseVal;
  const fontFaces = await embeddedFonts(inner + JSON.stringify(caption));
  return figureMarkup({ inner, viewBox: { x, y, width, height } }, caption, {
    ground: valueOf('--slip'),
    ink: valueOf('--ink'),
    inkSoft: valueOf('--ink-soft'),
    fontFamily: valueOf('--font-drawing'),
    fontFaces,
    measure: canvasMeasure(),
  });
}

/** The drawing's inside without what serves only the page: handlers' targets, classes, comments, focus marks. */
function strippedMarkup(svg: SVGSVGElement): string {
  const copy = svg.cloneNode(true) as SVGSVGElement;
  for (const part of copy.querySelectorAll('[data-page-only]')) part.remove();
  for (const part of copy.querySelectorAll('*')) {
    for (const name of part.getAttributeNames()) {
      if (/^(class|style|tabindex|role|data-.*|aria-.*)$/.test(name)) part.removeAttribute(name);
    }
  }
  const serialiser = new XMLSerializer();
  return [...copy.children].map((child) => serialiser.serializeToString(child)).join('');
}

/** Reads design tokens where the drawing stands: a colour as the browser computes it for the present theme. */
function tokenReader(svg: SVGSVGElement): (token: string) => string {
  const place = svg.parentElement ?? document.body;
  const known = new Map<string, string>();
  return (token) => {
    const found = known.get(token) ?? readToken(place, token);
    known.set(token, found);
    return found;
  };
}

function readToken(place: Element, token: string): string {
  const written = getComputedStyle(place).getPropertyValue(token).trim();
  if (written === '' || !CSS.supports('color', written)) return written.replaceAll('"', "'");
  const probe = document.createElement('span');
  probe.style.color = `var(${token})`;
  place.append(probe);
  const colour = getComputedStyle(probe).color;
  probe.remove();
  return colour;
}

function canvasMeasure(): MeasureText {
  const context = document.createElement('canvas').getContext('2d');
  if (context === null) return guessedWidth;
  return (text, size, weight) => {
    context.font = `${weight} ${size}px '${FAMILY}', 'Arial Narrow', sans-serif`;
    return context.measureText(text).width;
  };
}

/** `@font-face` rules with the fonts' bytes inside; Greek only where a Greek letter is drawn. */
async function embeddedFonts(text: string): Promise<string> {
  const files = /[\u0370-\u03ff]/.test(text) ? [latinFont, greekFont] : [latinFont];
  const faces = await Promise.all(files.map(embeddedFont));
  return faces.join('');
}

async function embeddedFont(address: string): Promise<string> {
  try {
    const answer = await fetch(address);
    if (!answer.ok) return '';
    const range = address === greekFont ? 'U+0370-03FF' : 'U+0000-036F,U+1E00-FFFF';
    return (
      `@font-face{font-family:'${FAMILY}';font-weight:1 1000;unicode-range:${range};` +
      `src:url(${await dataAddress(await answer.blob())}) format('woff2')}`
    );
  } catch {
    // Without the font the picture is still right: the reader's own narrow letter stands in.
    return '';
  }
}

function dataAddress(blob: Blob): Promise<string> {
  return new Promise((resolve, reject) => {
    const reader = new FileReader();
    reader.onload = () => {
      resolve(typeof reader.result === 'string' ? reader.result : '');
    };
    reader.onerror = () => {
      reject(new Error('A font could not be read.'));
    };
    reader.readAsDataURL(new Blob([blob], { type: 'font/woff2' }));
  });
}
