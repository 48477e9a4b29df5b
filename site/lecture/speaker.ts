import { readDeck, showBuilds } from './deck.ts';
import { find } from './find.ts';
import { listenToKeys } from './keys.ts';
import { openLink, type Message } from './link.ts';
import { recall, remember } from './memory.ts';
import { minutesAndSeconds, paceAt, paceInWords, sum } from './pace.ts';
import { toHash } from './place-address.ts';
import { after, opening, within, type Deed, type Show } from './show.ts';
import { stayAwake } from './stay-awake.ts';

const ASKS_EVERY = 1000;
/** A stage that has not answered for this long, ms, is taken to be gone. */
const PATIENCE = 3500;

const PARTS = ['link', 'where', 'upcoming', 'clock', 'elapsed', 'pace', 'others'] as const;

/** Runs the speaker's window. It follows the first stage that answers; with none, it turns its own pages. */
export function runSpeaker(root: HTMLElement): void {
  const deck = readDeck(root);
  const memory = `${deck.id}.speaker`;
  const parts = new Map(
    PARTS.map((name) => [name, find(root, `[data-part="${name}"]`, HTMLElement)]),
  );
  const stageLink = find(root, '[data-part="open-stage"]', HTMLAnchorElement);
  const darkButton = find(root, '[data-deed="dark"]', HTMLElement);
  let show: Show = opening;
  let stage: string | null = null;
  let heardAt = 0;
  let otherHeardAt = 0;

  const link = openLink(deck.id, hear);

  function hear(message: Message): void {
    if (message.kind === 'stands') {
      stage ??= message.stage;
      if (message.stage === stage) {
        heardAt = Date.now();
        put({ ...message.show, ...within(message.show, deck.builds) });
      } else otherHeardAt = Date.now();
    }
    if (message.kind === 'leaves' && message.stage === stage) stage = null;
    tick();
  }

  function perform(deed: Deed): void {
    if (stage !== null) link.say({ kind: 'do', stage, deed });
    else put(after(show, deed, deck.builds, Date.now()));
  }

  function put(next: Show): void {
    show = next;
    remember(memory, show);
    draw();
    tick();
  }

  function draw(): void {
    deck.steps.forEach((step, index) => {
      step.toggleAttribute('data-now', index === show.step);
      step.toggleAttribute('data-next', index === show.step + 1);
      showBuilds(step, index === show.step ? show.build : 0);
    });
    write('where', `Step ${show.step + 1} of ${deck.steps.length}`);
    write('upcoming', upcoming());
    darkButton.setAttribute('aria-pressed', String(show.isDark));
    root.toggleAttribute('data-dark', show.isDark);
    stageLink.hash = toHash(show);
  }

  function upcoming(): string {
    const builds = deck.builds[show.step] ?? 0;
    if (show.isDark) return 'Next press: light again';
    if (show.build < builds) return `Next press: build ${show.build + 1} of ${builds}`;
    const title = deck.titles[show.step + 1];
    return title === undefined ? 'This is the last step' : `Next press: ${title}`;
  }

  function tick(): void {
    if (stage !== null && Date.now() - heardAt > PATIENCE) stage = null;
    root.toggleAttribute('data-linked', stage !== null);
    write(
      'link',
      stage === null
        ? 'No stage window answers. The buttons turn this window’s pages alone.'
        : 'Linked to the stage window.',
    );
    const hasOther = Date.now() - otherHeardAt <= PATIENCE;
    write('others', hasOther ? 'A second stage window is open. This one follows the first.' : null);
    const now = new Date();
    write('clock', now.toLocaleTimeString([], { hour: '2-digit', minute: '2-digit' }));
    const elapsed = show.startedAt === null ? 0 : (now.getTime() - show.startedAt) / 1000;
    write(
      'elapsed',
      `${minutesAndSeconds(elapsed)} of ${minutesAndSeconds(60 * sum(deck.minutes))}`,
    );
    const { plannedEnd, late } = paceAt(deck.minutes, show.step, elapsed);
    const plan = `this step ends at ${minutesAndSeconds(plannedEnd)}`;
    write(
      'pace',
      show.startedAt === null
        ? `Starts with the first step forward; ${plan}`
        : `${paceInWords(late)}; ${plan}`,
    );
    root.dataset.pace = show.startedAt === null || late <= 0 ? 'kept' : 'late';
  }

  function write(name: (typeof PARTS)[number], text: string | null): void {
    const part = parts.get(name);
    if (part === undefined) return;
    part.hidden = text === null;
    if (text !== null && part.textContent !== text) part.textContent = text;
  }

  const stored = recall(memory) ?? opening;
  put({ ...stored, ...within(stored, deck.builds) });
  root.setAttribute('data-running', '');
  for (const button of root.querySelectorAll<HTMLElement>('[data-deed]')) {
    button.addEventListener('click', () => {
      perform(button.dataset.deed as Deed);
    });
  }
  listenToKeys((wish) => {
    if (wish !== 'full-screen' && wish !== 'speaker-window') perform(wish);
  });
  link.say({ kind: 'ask' });
  setInterval(() => {
    link.say({ kind: 'ask' });
    tick();
  }, ASKS_EVERY);
  stayAwake();
}
