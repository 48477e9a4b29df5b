import { chromium, type Browser, type Page } from '@playwright/test';
import { browserFlags } from '../../site/scripts/browser-flags.mjs';
import { requireBrowser } from '../../site/scripts/find-browser.mjs';
import { serve } from '../../site/scripts/serve.mjs';
import {
  dragRepaints,
  frameTimes,
  layoutShift,
  slowDown,
  visitWhole,
  workOf,
} from '../browser/support/measure.ts';
import { builtRoutes } from '../browser/support/routes.ts';
import { median, rounded, table } from './table.ts';

const SLOW_DOWN = 4;
const LOADS = 5;
const REPAINT_BUDGET_MS = 50;
const FRAME_BUDGET_MS = 1000 / 60;

interface Loading {
  readonly firstPaint: number;
  readonly load: number;
  readonly blocked: number;
}

/** How fast each page loads and its sims answer on a processor four times slower, from this machine. */
export async function pageSpeeds(): Promise<string> {
  const { address, close } = await serve({ port: 0 });
  const executablePath = await requireBrowser();
  const browser = await chromium.launch({ executablePath, args: browserFlags });
  try {
    const routes = builtRoutes();
    const loads: (string | number)[][] = [];
    const sims: (string | number)[][] = [];
    for (const route of routes) {
      const url = new URL(route, address).href;
      loads.push([`/${route}`, ...(await loadRow(browser, url))]);
      const sim = await simRow(browser, url);
      if (sim !== undefined) sims.push([`/${route}`, ...sim]);
    }
    return (
      table(
        `Time to load, ms, processor slowed ${SLOW_DOWN}×, empty cache, median of ${LOADS}`,
        ['page', 'first paint', 'loaded', 'longest task', 'layout shift'],
        loads,
      ) +
      table(
        `Sims, processor slowed ${SLOW_DOWN}×: a slider dragged through its range, then left alone for a second; work: of the slider with most, a move`,
        [
          'page',
          'sliders',
          'repaint ms',
          'worst',
          'work ms',
          '÷ 50 ms',
          'frame ms',
          '÷ 60 Hz frame',
        ],
        sims,
      )
    );
  } finally {
    await browser.close();
    await close();
  }
}

async function loadRow(browser: Browser, url: string): Promise<readonly number[]> {
  const loads: Loading[] = [];
  let shift = 0;
  for (let i = 0; i < LOADS; i++) {
    const page = await slowPage(browser);
    await page.goto(url, { waitUntil: 'load' });
    loads.push(await loadingOf(page));
    shift = Math.max(shift, await layoutShift(page));
    await page.context().close();
  }
  const middle = (key: keyof Loading) => rounded(median(loads.map((load) => load[key])));
  return [middle('firstPaint'), middle('load'), middle('blocked'), rounded(shift, 3)];
}

/** A page in a context, and so a cache, of its own. */
async function slowPage(browser: Browser): Promise<Page> {
  const page = await (await browser.newContext()).newPage();
  await slowDown(page, SLOW_DOWN);
  return page;
}

function loadingOf(page: Page): Promise<Loading> {
  return page.evaluate(
    () =>
      new Promise<Loading>((resolve) => {
        const tasks: number[] = [];
        const observer = new PerformanceObserver((list) => {
          tasks.push(...list.getEntries().map(({ duration }) => duration));
        });
        observer.observe({ type: 'longtask', buffered: true });
        setTimeout(() => {
          const [navigation] = performance.getEntriesByType('navigation');
          const [paint] = performance.getEntriesByName('first-contentful-paint');
          const load = (navigation as PerformanceNavigationTiming).loadEventEnd;
          resolve({ firstPaint: paint?.startTime ?? NaN, load, blocked: Math.max(0, ...tasks) });
        }, 500);
      }),
  );
}

/** What the sliders of a page's sims cost; undefined where it has none. */
async function simRow(browser: Browser, url: string): Promise<readonly number[] | undefined> {
  const page = await slowPage(browser);
  await page.goto(url);
  await visitWhole(page);
  const sliders = page.locator('input[type=range]:visible');
  const count = await sliders.count();
  const repaints: number[] = [];
  const works: number[] = [];
  for (let i = 0; i < count; i++) {
    let moves: readonly number[] = [];
    const work = await workOf(page, async () => {
      moves = await dragRepaints(sliders.nth(i));
    });
    repaints.push(...moves);
    works.push((SLOW_DOWN * work) / moves.length);
  }
  const frames = count > 0 ? await frameTimes(page, 1000) : [];
  await page.context().close();
  if (count === 0) return undefined;
  const worst = Math.max(...repaints);
  const work = Math.max(...works);
  const frame = median(frames);
  return [
    count,
    rounded(median(repaints), 1),
    rounded(worst, 1),
    rounded(work, 1),
    rounded(work / REPAINT_BUDGET_MS, 2),
    rounded(frame, 1),
    rounded(frame / FRAME_BUDGET_MS, 2),
  ];
}
