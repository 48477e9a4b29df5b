import type { Locator, Page } from '@playwright/test';

/** Sum of the layout shifts of a page since it began to load, those just after an input left out, as browsers score it. */
export function layoutShift(page: Page): Promise<number> {
  return page.evaluate(
    () =>
      new Promise<number>((resolve) => {
        let sum = 0;
        const observer = new PerformanceObserver((list) => {
          for (const entry of list.getEntries() as (PerformanceEntry & LayoutShift)[]) {
            if (!entry.hadRecentInput) sum += entry.value;
          }
        });
        observer.observe({ type: 'layout-shift', buffered: true });
        // Two frames: what lies in the buffer is handed over before then.
        requestAnimationFrame(() => requestAnimationFrame(() => resolve(sum)));
      }),
  );
  interface LayoutShift {
    readonly value: number;
    readonly hadRecentInput: boolean;
  }
}

/** By how much a page is wider than its window, px: 0 unless it scrolls sideways. */
export function overflow(page: Page): Promise<number> {
  return page.evaluate(() => {
    const { scrollWidth, clientWidth } = document.documentElement;
    return scrollWidth - clientWidth;
  });
}

/** Slows the processor of a page down by a factor, until the page is closed. */
export async function slowDown(page: Page, factor: number): Promise<void> {
  const devtools = await page.context().newCDPSession(page);
  await devtools.send('Emulation.setCPUThrottlingRate', { rate: factor });
}

/** Scrolls through a page from top to bottom, so that every sim that shows there starts, and back. */
export async function visitWhole(page: Page): Promise<void> {
  await page.evaluate(async () => {
    const step = window.innerHeight / 2;
    for (let top = 0; top < document.documentElement.scrollHeight; top += step) {
      window.scrollTo({ top, behavior: 'instant' });
      await new Promise((resolve) => requestAnimationFrame(() => setTimeout(resolve, 30)));
    }
    window.scrollTo({ top: 0, behavior: 'instant' });
  });
  // Those on a slide that is not up are not shown, and do not start.
  await page.waitForFunction(() => {
    const waiting = [...document.querySelectorAll('astro-island[ssr]')];
    return !waiting.some(({ children }) => [...children].some((child) => child.checkVisibility()));
  });
}

/**
 * Moves a slider to twenty places through its range, one after another, as a drag does, and returns how long each took
 * from the input to the frame that shows it, ms.
 */
export function dragRepaints(slider: Locator): Promise<readonly number[]> {
  return slider.evaluate(async (input: HTMLInputElement) => {
    const moves = 20;
    const [min, max] = [Number(input.min), Number(input.max)];
    const times: number[] = [];
    input.scrollIntoView({ block: 'center', behavior: 'instant' });
    for (let i = 0; i <= moves; i++) {
      await new Promise(requestAnimationFrame);
      input.valueAsNumber = min + ((max - min) * i) / moves;
      const start = performance.now();
      input.dispatchEvent(new Event('input', { bubbles: true }));
      // A message posted in the frame's callback is taken up after that frame was laid out and painted.
      await new Promise<void>((resolve) => {
        requestAnimationFrame(() => {
          const channel = new MessageChannel();
          channel.port1.onmessage = () => resolve();
          channel.port2.postMessage(null);
        });
      });
      times.push(performance.now() - start);
    }
    input.dispatchEvent(new Event('change', { bubbles: true }));
    return times;
  });
}

/** Times from frame to frame over a stretch of time, ms. */
export function frameTimes(page: Page, duration: number): Promise<readonly number[]> {
  return page.evaluate(
    (end) =>
      new Promise<readonly number[]>((resolve) => {
        const times: number[] = [];
        let [start, last] = [0, 0];
        const frame = (now: number): void => {
          if (start === 0) start = now;
          else times.push(now - last);
          last = now;
          if (now - start < end) requestAnimationFrame(frame);
          else resolve(times);
        };
        requestAnimationFrame(frame);
      }),
    duration,
  );
}

/**
 * What a stretch of doing makes the page's main thread work, ms: not how long it takes, which others on the machine
 * lengthen, and slowing down too.
 */
export async function workOf(page: Page, doing: () => Promise<void>): Promise<number> {
  const devtools = await page.context().newCDPSession(page);
  await devtools.send('Performance.enable', { timeDomain: 'threadTicks' });
  const worked = async (): Promise<number> => {
    const { metrics } = await devtools.send('Performance.getMetrics');
    return 1000 * (metrics.find(({ name }) => name === 'TaskDuration')?.value ?? Number.NaN);
  };
  const before = await worked();
  await doing();
  const work = (await worked()) - before;
  await devtools.detach();
  return work;
}
