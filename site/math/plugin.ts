import katex from 'katex';
import { defineMdastPlugin } from 'satteri';

/**
 * Renders the formulas of a lesson ($…$ and $$…$$) at build, as MathML for ears and HTML for eyes.
 * A formula that does not parse stops the build and names its file and text.
 */
export const mathPlugin = defineMdastPlugin({
  name: 'held-in-the-cup-math',
  inlineMath: (node, context) => rawHtml(node.value, false, context.fileURL),
  math: (node, context) => rawHtml(node.value, true, context.fileURL),
});

function rawHtml(
  tex: string,
  displayMode: boolean,
  file: URL | undefined,
): { raw: string; mdxExpressions: false } {
  return {
    raw: renderFormula(tex, displayMode, file?.pathname ?? 'a page'),
    mdxExpressions: false,
  };
}

/** The HTML of one formula. Throws with `where` and the formula's text if it does not parse. */
export function renderFormula(tex: string, displayMode: boolean, where: string): string {
  try {
    const html = katex.renderToString(tex, { displayMode, throwOnError: true, strict: 'error' });
    // A formula wider than a phone scrolls, and what scrolls must be within reach of the keyboard.
    return displayMode ? `<div class="formula" tabindex="0">${html}</div>` : html;
  } catch (error) {
    throw new Error(`Formula in ${where} does not parse: ${tex}\n${String(error)}`, {
      cause: error,
    });
  }
}
