import { test as base, expect, type BrowserContext } from '@playwright/test';

interface Watch {
  /** Faults that a test brings about on purpose, as the browser words them. */
  readonly expectedFaults: readonly RegExp[];
  /** What went wrong in the browser so far. The test fails at its end if there is anything unexpected in it. */
  readonly faults: readonly string[];
}

/**
 * Playwright's test, which also fails on any error in the console, uncaught error, breach of the content security
 * policy, or request to another place, in any page or window that it opens.
 */
export const test = base.extend<Watch>({
  expectedFaults: [[], { option: true }],
  faults: [
    async ({ context, baseURL, expectedFaults }, use) => {
      const faults: string[] = [];
      await watch(context, new URL(baseURL ?? '').origin, (fault) => faults.push(fault));
      await use(faults);
      const isExpected = (fault: string) => expectedFaults.some((words) => words.test(fault));
      expect(faults.filter((fault) => !isExpected(fault))).toEqual([]);
    },
    { auto: true },
  ],
});

export { expect };

async function watch(
  context: BrowserContext,
  origin: string,
  report: (fault: string) => void,
): Promise<void> {
  context.on('console', (message) => {
    if (message.type() === 'error') report(`console: ${message.text()}`);
  });
  context.on('weberror', (error) => {
    report(`uncaught: ${error.error().message}`);
  });
  context.on('request', (request) => {
    const url = new URL(request.url());
    const isOutside = /^(https?|wss?):$/.test(url.protocol) && url.origin !== origin;
    if (isOutside) report(`request to another place: ${url.href}`);
  });
  await context.addInitScript(() => {
    document.addEventListener('securitypolicyviolation', (event) => {
      console.error(`content security policy: ${event.violatedDirective} ${event.blockedURI}`);
    });
  });
}
