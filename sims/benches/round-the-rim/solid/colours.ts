/** Colours of the view, as the page has them now: a token and what it is for. */
const tokens = {
  ink: '--ink',
  bone: '--bone',
  boneLine: '--bone-line',
  lip: '--flesh',
  plastic: '--plastic',
  cement: '--cement',
  ball: '--metal',
  low: '--motion-wash',
  high: '--motion',
  motion: '--motion',
  force: '--force',
  slip: '--slip',
} as const;

/** Red, green, blue from 0 to 1. */
export type Rgb = readonly [number, number, number];
export type SolidColours = { readonly [Name in keyof typeof tokens]: Rgb };

/** Reads the design's colours where an element stands, in its present theme. */
export function readColours(place: Element): SolidColours {
  const probe = document.createElement('span');
  place.append(probe);
  const read = (token: string): Rgb => {
    probe.style.color = `var(${token})`;
    return rgbOf(getComputedStyle(probe).color);
  };
  try {
    return Object.fromEntries(
      Object.entries(tokens).map(([name, token]) => [name, read(token)]),
    ) as SolidColours;
  } finally {
    probe.remove();
  }
}

/** A computed colour, "rgb(18, 96, 156)", in numbers; black for anything else. */
export function rgbOf(text: string): Rgb {
  const [r = 0, g = 0, b = 0] = (text.match(/[\d.]+/g) ?? []).map(Number);
  return [r / 255, g / 255, b / 255];
}

/** A colour between two. */
export function between(low: Rgb, high: Rgb, share: number): Rgb {
  const mix = (from: number, to: number): number => from + (to - from) * share;
  return [mix(low[0], high[0]), mix(low[1], high[1]), mix(low[2], high[2])];
}

/** Calls back when the theme changes, by the page's switch or the system's. Returns how to stop. */
export function onTheme(changed: () => void): () => void {
  const watch = new MutationObserver(changed);
  watch.observe(document.documentElement, { attributes: true, attributeFilter: ['data-theme'] });
  const system = matchMedia('(prefers-color-scheme: dark)');
  system.addEventListener('change', changed);
  return () => {
    watch.disconnect();
    system.removeEventListener('change', changed);
  };
}
