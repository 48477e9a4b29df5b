import type { Deed, Show } from './show.ts';

/** What the stage and the speaker's window say to each other. Each stage window has a name of its own. */
export type Message =
  | { readonly kind: 'ask' }
  | { readonly kind: 'stands'; readonly stage: string; readonly show: Show }
  | { readonly kind: 'leaves'; readonly stage: string }
  | { readonly kind: 'do'; readonly stage: string; readonly deed: Deed };

const deeds: readonly unknown[] = [
  'forward',
  'back',
  'first',
  'last',
  'dark',
  'restart-clock',
] satisfies readonly Deed[];

/** The message in what came through the channel; null where it is none of ours, as from a tab of an older version. */
export function readMessage(data: unknown): Message | null {
  if (!isRecord(data)) return null;
  if (data.kind === 'ask') return { kind: 'ask' };
  const { stage } = data;
  if (typeof stage !== 'string') return null;
  if (data.kind === 'leaves') return { kind: 'leaves', stage };
  if (data.kind === 'do' && deeds.includes(data.deed)) {
    return { kind: 'do', stage, deed: data.deed as Deed };
  }
  const show = data.kind === 'stands' ? readShow(data.show) : null;
  return show === null ? null : { kind: 'stands', stage, show };
}

/** The show in a value from outside this page; null where it is no show. */
export function readShow(value: unknown): Show | null {
  if (!isRecord(value)) return null;
  const { step, build, isDark, startedAt } = value;
  if (!isCount(step) || !isCount(build) || typeof isDark !== 'boolean') return null;
  if (startedAt !== null && !(typeof startedAt === 'number' && Number.isFinite(startedAt))) {
    return null;
  }
  return { step, build, isDark, startedAt };
}

function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null;
}

function isCount(value: unknown): value is number {
  return typeof value === 'number' && Number.isInteger(value) && value >= 0;
}

export interface Link {
  readonly say: (message: Message) => void;
}

/** Opens the channel of one deck. Where the browser has none, it stays silent and the stage runs alone. */
export function openLink(deck: string, hear: (message: Message) => void): Link {
  if (typeof BroadcastChannel === 'undefined') return { say: () => undefined };
  const channel = new BroadcastChannel(`held-in-the-cup.lecture.${deck}`);
  channel.addEventListener('message', (event) => {
    const message = readMessage(event.data);
    if (message !== null) hear(message);
  });
  return {
    say: (message) => {
      channel.postMessage(message);
    },
  };
}
