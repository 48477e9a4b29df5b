import { readDeck, showBuilds } from './deck.ts';
import { find } from './find.ts';
import { listenToKeys, type Wish } from './keys.ts';
import { openLink } from './link.ts';
import { recall, remember } from './memory.ts';
import { fromHash, toHash } from './place-address.ts';
import { after, opening, within, type Deed, type Show } from './show.ts';
import { stayAwake } from './stay-awake.ts';
import { listenToSwipes } from './swipe.ts';

const POINTER_RESTS_AFTER = 2500;
const USED_FACES = /Source Serif|Sofia Sans|KaTeX_(?:Main|Math|Size\d)/;

/** Runs the stage: the window on the projector. */
export function runStage(root: HTMLElement): void {
  const deck = readDeck(root);
  const name = `${Date.now().toString(36)}-${Math.random().toString(36).slice(2)}`;
  const parts = {
    count: find(root, '.count', HTMLElement),
    said: find(root, '.said', HTMLElement),
    dark: find(root, '.dark', HTMLElement),
    speaker: find(root, '.speaker-link', HTMLAnchorElement),
  };
  let show = firstShow(deck.id, deck.builds);

  const link = openLink(deck.id, (message) => {
    if (message.kind === 'ask') link.say({ kind: 'stands', stage: name, show });
    if (message.kind === 'do' && message.stage === name) perform(message.deed);
  });

  function perform(deed: Deed): void {
    put(after(show, deed, deck.builds, Date.now()));
  }

  function put(next: Show): void {
    show = next;
    draw();
    remember(deck.id, show);
    writeAddress(toHash(show));
    link.say({ kind: 'stands', stage: name, show });
  }

  function draw(): void {
    deck.steps.forEach((step, index) => {
      step.toggleAttribute('data-now', index === show.step);
    });
    const step = deck.steps[show.step];
    if (step !== undefined) showBuilds(step, show.build);
    parts.dark.hidden = !show.isDark;
    parts.count.textContent = `${show.step + 1} / ${deck.steps.length}`;
    root.style.setProperty('--gone', String((show.step + 1) / deck.steps.length));
    const said = `Step ${show.step + 1} of ${deck.steps.length}: ${deck.titles[show.step] ?? ''}`;
    if (parts.said.textContent !== said) parts.said.textContent = said;
  }

  function grant(wish: Wish): void {
    if (wish === 'full-screen') toggleFullScreen();
    else if (wish === 'speaker-window') openSpeaker(parts.speaker.href);
    else perform(wish);
  }

  put(show);
  root.setAttribute('data-running', '');
  listenToKeys(grant);
  listenToSwipes(perform);
  for (const button of root.querySelectorAll<HTMLElement>('[data-wish]')) {
    button.addEventListener('click', (event) => {
      event.preventDefault();
      grant(button.dataset.wish as Wish);
    });
  }
  window.addEventListener('hashchange', () => {
    const place = fromHash(location.hash);
    if (place !== null) put({ ...show, ...within(place, deck.builds) });
  });
  window.addEventListener('pagehide', () => {
    link.say({ kind: 'leaves', stage: name });
  });
  restPointer(root);
  stayAwake();
  loadFaces();
}

/**
 * Where to begin: on a reload where this window was; else the place the address names; else where this window was.
 * A reload never comes up dark.
 */
function firstShow(deck: string, builds: readonly number[]): Show {
  const [entry] = performance.getEntriesByType('navigation') as PerformanceNavigationTiming[];
  const stored = recall(deck);
  const named = entry?.type === 'reload' && stored !== null ? null : fromHash(location.hash);
  const show = { ...opening, ...stored, ...named, isDark: false };
  return { ...show, ...within(show, builds) };
}

/** Browsers limit how often an address may change; past that, the stored place is the one that counts. */
function writeAddress(hash: string): void {
  if (location.hash === hash) return;
  try {
    history.replaceState(history.state, '', hash);
  } catch {
    // Too many moves in too short a time.
  }
}

function toggleFullScreen(): void {
  const change =
    document.fullscreenElement === null
      ? document.documentElement.requestFullscreen()
      : document.exitFullscreen();
  change.catch(() => undefined);
}

function openSpeaker(address: string): void {
  window.open(address, '_blank', 'noopener,popup,width=1180,height=800');
}

/** Hides pointer and tools while the mouse lies still. */
function restPointer(root: HTMLElement): void {
  let timer = 0;
  const wake = (): void => {
    root.removeAttribute('data-still');
    clearTimeout(timer);
    timer = window.setTimeout(() => {
      root.setAttribute('data-still', '');
    }, POINTER_RESTS_AFTER);
  };
  window.addEventListener('pointermove', wake);
  wake();
}

/** Fetches the typefaces of every step now: a later one may be shown after the network has gone. */
function loadFaces(): void {
  for (const face of document.fonts) {
    if (USED_FACES.test(face.family)) face.load().catch(() => undefined);
  }
}
