import {
  emptyState,
  readState,
  withEntry,
  type Answer,
  type LessonState,
  type Prediction,
  type StoredState,
} from './stored-state.ts';

/** Everything the course keeps on a device stands under keys that begin so. */
export const KEY_PREFIX = 'held-in-the-cup.';
export const STATE_KEY = `${KEY_PREFIX}study`;
/** Where a state this version cannot read is kept: this, and a running number. */
export const ASIDE_KEY = `${KEY_PREFIX}study-aside-`;

export const notices = {
  newer:
    'Answers stored by a newer version of the course were found. They are kept aside, untouched; this page starts afresh.',
  unreadable:
    'Answers stored earlier could not be read. They are kept aside, untouched; this page starts afresh.',
  off: 'This browser keeps nothing for the page (a private window, or storage switched off): what you answer lasts until you leave.',
  full: 'The browser’s storage is full: what you answer from here on lasts until you leave the page.',
} as const;

/** What a visitor predicted and answered, kept on the device and nowhere else. */
export interface StudyStore {
  readonly state: () => StoredState;
  readonly prediction: (lesson: string, id: string) => Prediction | undefined;
  readonly answer: (lesson: string, id: string) => Answer | undefined;
  /** Keeps a prediction; undefined takes it back. */
  readonly keepPrediction: (
    lesson: string,
    id: string,
    entry: Omit<Prediction, 'at'> | undefined,
  ) => void;
  /** Keeps an answer; undefined takes it back. */
  readonly keepAnswer: (lesson: string, id: string, entry: Omit<Answer, 'at'> | undefined) => void;
  /** Something to tell the visitor, once: the second call returns undefined until there is something new. */
  readonly takeNotice: () => string | undefined;
  /** Calls `listener` after every change, here or in another tab. Returns how to stop. */
  readonly subscribe: (listener: () => void) => () => void;
  /** Removes everything the course keeps on the device, what was kept aside included. Returns the number of entries. */
  readonly erase: () => number;
}

type Keeper = Pick<Storage, 'getItem' | 'setItem' | 'removeItem' | 'key' | 'length'>;

/** The part of a window that tells of changes made in another tab. */
interface StorageEvents {
  addEventListener(
    type: 'storage',
    listener: (event: { readonly key: string | null }) => void,
  ): void;
}

/**
 * Opens the store. It never throws: where the device keeps nothing, it works in memory and says so through a notice.
 *
 * Each change is read, changed and written in one go, so tabs open side by side add to one state. A state of a newer
 * version, or one that cannot be read, is moved to a key of its own before anything is written in its place; where
 * that fails it is left alone and this page works in memory.
 *
 * @param device.storage returns the storage; may throw, as a browser's own getter does where storage is off
 * @param device.events where changes made in another tab are told
 * @param device.now the time, ms since 1970
 */
export function openStore(device: {
  readonly storage: () => Keeper;
  readonly events?: StorageEvents;
  readonly now?: () => number;
}): StudyStore {
  const now = device.now ?? Date.now;
  const listeners = new Set<() => void>();
  const told = new Set<string>();
  let isInMemory = false;
  let notice: string | undefined;
  let state = emptyState;

  function say(kind: keyof typeof notices): void {
    if (told.has(kind)) return;
    told.add(kind);
    notice = notices[kind];
  }

  function useMemory(kind: 'off' | 'full'): void {
    isInMemory = true;
    say(kind);
  }

  /** The state on the device; an empty one, with a notice, where what is there cannot be used. */
  function load(): StoredState {
    const reading = readState(device.storage().getItem(STATE_KEY));
    if (reading.kind === 'state') return reading.state;
    if (reading.kind !== 'nothing') say(reading.kind);
    return emptyState;
  }

  function refresh(): void {
    if (isInMemory) return;
    try {
      state = load();
    } catch {
      useMemory('off');
    }
  }

  function change(next: (before: StoredState) => StoredState): void {
    refresh();
    state = next(state);
    if (!isInMemory) {
      try {
        const storage = device.storage();
        keepAside(storage);
        storage.setItem(STATE_KEY, JSON.stringify(state));
      } catch {
        useMemory('full');
      }
    }
    for (const listener of listeners) listener();
  }

  function keep<Part extends keyof LessonState>(
    lesson: string,
    part: Part,
    id: string,
    entry: LessonState[Part][string] | undefined,
  ): void {
    change((before) => withEntry(before, lesson, part, id, entry));
  }

  refresh();
  device.events?.addEventListener('storage', ({ key }) => {
    if (isInMemory || (key !== null && key !== STATE_KEY)) return;
    refresh();
    for (const listener of listeners) listener();
  });

  return {
    state: () => state,
    prediction: (lesson, id) => state.lessons[lesson]?.predictions[id],
    answer: (lesson, id) => state.lessons[lesson]?.answers[id],
    keepPrediction: (lesson, id, entry) =>
      keep(lesson, 'predictions', id, entry && { ...entry, at: now() }),
    keepAnswer: (lesson, id, entry) =>
      keep(lesson, 'answers', id, entry && { ...entry, at: now() }),
    takeNotice: () => {
      const line = notice;
      notice = undefined;
      return line;
    },
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    erase: () => {
      let count = 0;
      try {
        count = removeAll(device.storage());
      } catch {
        useMemory('off');
      }
      state = emptyState;
      for (const listener of listeners) listener();
      return count;
    },
  };
}

/** Copies a state this version cannot use to a key of its own; the same text is kept once. Throws where there is no room. */
function keepAside(storage: Keeper): void {
  const text = storage.getItem(STATE_KEY);
  const { kind } = readState(text);
  if (text === null || kind === 'state' || kind === 'nothing') return;
  let number = 1;
  for (;;) {
    const kept = storage.getItem(`${ASIDE_KEY}${number}`);
    if (kept === text) return;
    if (kept === null) break;
    number += 1;
  }
  storage.setItem(`${ASIDE_KEY}${number}`, text);
}

function removeAll(storage: Keeper): number {
  const keys = Array.from({ length: storage.length }, (_, i) => storage.key(i));
  const ours = keys.filter((key) => key?.startsWith(KEY_PREFIX) === true);
  for (const key of ours) if (key !== null) storage.removeItem(key);
  return ours.length;
}
