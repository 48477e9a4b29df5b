import { join } from 'node:path';
import { artefacts } from '../../../site/scripts/project.mjs';

/** The four sizes every page is looked at in: laptop, projector, tablet upright, phone. */
export const screens = [
  { name: 'laptop', width: 1280, height: 720 },
  { name: 'projector', width: 1920, height: 1080 },
  { name: 'tablet', width: 820, height: 1180 },
  { name: 'phone', width: 390, height: 844 },
] as const;

export type Screen = (typeof screens)[number];

export function screenOf(name: Screen['name']): Screen {
  const screen = screens.find((each) => each.name === name);
  if (screen === undefined) throw new RangeError(`name is ${name}; allowed: one of the screens`);
  return screen;
}

export const schemes = ['light', 'dark'] as const;

export type Scheme = (typeof schemes)[number];

/** Where the picture of a page goes. */
export function pictureFile(route: string, screen: Screen, scheme: Scheme): string {
  const page =
    route
      .replace(/\/$/, '')
      .replaceAll('/', '-')
      .replace(/\.html$/, '') || 'home';
  return join(artefacts, 'screenshots', `${page}-${screen.name}-${scheme}.png`);
}
