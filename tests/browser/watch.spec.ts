import { expectNoAxeViolations, expectNoFaintText } from './support/accessibility.ts';
import { expect, test } from './support/test.ts';

/** The watch that every other browser test relies on sees what it should. */
test.use({ expectedFaults: [/./] });

test('an error in the console, an uncaught one, and a request to another place are seen', async ({
  page,
  faults,
}) => {
  await page.goto('');
  await page.evaluate(() => {
    console.error('planted');
    setTimeout(() => {
      throw new Error('thrown');
    });
    const image = new Image();
    image.src = 'https://elsewhere.invalid/picture.png';
  });
  await expect
    .poll(() => faults.join('\n'))
    .toMatch(/console: planted[^]*uncaught: thrown|uncaught: thrown[^]*console: planted/);
  await expect
    .poll(() => faults)
    .toContain('console: content security policy: img-src https://elsewhere.invalid/picture.png');
});

test('a script the page was not built with does not run and is seen', async ({ page, faults }) => {
  await page.goto('');
  await page.evaluate(() => {
    const script = document.createElement('script');
    script.textContent = 'document.title = "taken over"';
    document.body.append(script);
  });
  await expect
    .poll(() => faults)
    .toContain('console: content security policy: script-src-elem inline');
  await expect(page).not.toHaveTitle('taken over');
});

test('a target that is too small to hit is objected to', async ({ page }) => {
  await page.goto('');
  await page.evaluate(() => {
    const main = document.querySelector('main');
    for (const name of ['one', 'two']) {
      const button = document.createElement('button');
      button.setAttribute('aria-label', name);
      Object.assign(button.style, { width: '8px', height: '8px', padding: '0', minHeight: '0' });
      main?.append(button);
    }
  });
  await expect(expectNoAxeViolations(page)).rejects.toThrow('target-size');
});

test('text too faint in the dark is objected to', async ({ page }) => {
  await page.emulateMedia({ colorScheme: 'dark' });
  await page.goto('');
  await expectNoFaintText(page);
  await page.evaluate(() => {
    const text = Object.assign(document.createElement('p'), { textContent: 'hardly there' });
    text.style.color = '#333';
    document.querySelector('main')?.append(text);
  });
  await expect(expectNoFaintText(page)).rejects.toThrow('color-contrast');
});
