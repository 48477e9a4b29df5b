import { describe, expect, test, vi } from 'vitest';
import { ASIDE_KEY, STATE_KEY, notices, openStore } from '../../../sims/shared/store.ts';

const LESSON = '01-ball-and-cup';

/** A device's storage as the browser's, with room for `room` characters. */
function fakeStorage(entries: Record<string, string> = {}, room = Infinity) {
  const kept = new Map(Object.entries(entries));
  return {
    kept,
    get length() {
      return kept.size;
    },
    key: (index: number) => [...kept.keys()][index] ?? null,
    getItem: (key: string) => kept.get(key) ?? null,
    removeItem: (key: string) => void kept.delete(key),
    setItem(key: string, value: string) {
      const others = [...kept].filter(([name]) => name !== key);
      const used = others.reduce((sum, [name, text]) => sum + name.length + text.length, 0);
      if (used + key.length + value.length > room) {
        throw new DOMException('no room', 'QuotaExceededError');
      }
      kept.set(key, value);
    },
  };
}

function tab(storage: ReturnType<typeof fakeStorage>) {
  const heard: ((event: { key: string | null }) => void)[] = [];
  const events = {
    addEventListener: (_: 'storage', listener: (event: { key: string | null }) => void) => {
      heard.push(listener);
    },
  };
  const store = openStore({ storage: () => storage, events, now: () => 1000 });
  const tellOfChange = (key: string | null) => {
    for (const listener of heard) listener({ key });
  };
  return { store, tellOfChange };
}

const prediction = { given: 'twice', isShown: true };
const answer = { given: 0.63, isRight: true, tries: 2 };

describe('what is kept', () => {
  test('a prediction and an answer come back after the page is opened again', () => {
    const storage = fakeStorage();
    const { store } = tab(storage);
    store.keepPrediction(LESSON, 'push', prediction);
    store.keepAnswer(LESSON, 'ratio', answer);
    const again = tab(storage).store;
    expect(again.prediction(LESSON, 'push')).toEqual({ ...prediction, at: 1000 });
    expect(again.answer(LESSON, 'ratio')).toEqual({ ...answer, at: 1000 });
    expect(again.takeNotice()).toBeUndefined();
  });

  test('a prediction taken back is gone, and nothing else with it', () => {
    const storage = fakeStorage();
    const { store } = tab(storage);
    store.keepPrediction(LESSON, 'push', prediction);
    store.keepPrediction(LESSON, 'flat', prediction);
    store.keepAnswer('02-ball-path', 'slope', answer);
    store.keepPrediction(LESSON, 'push', undefined);
    const again = tab(storage).store;
    expect(again.prediction(LESSON, 'push')).toBeUndefined();
    expect(again.prediction(LESSON, 'flat')).toBeDefined();
    expect(again.answer('02-ball-path', 'slope')).toBeDefined();
  });

  test('a listener hears every change until it stops listening', () => {
    const { store } = tab(fakeStorage());
    const listener = vi.fn();
    const stop = store.subscribe(listener);
    store.keepPrediction(LESSON, 'push', prediction);
    store.keepAnswer(LESSON, 'ratio', answer);
    stop();
    store.keepAnswer(LESSON, 'ratio', undefined);
    expect(listener).toHaveBeenCalledTimes(2);
  });
});

describe('what cannot be read', () => {
  const newer = JSON.stringify({ version: 2, lessons: 'in another form' });
  const broken: readonly (readonly [string, string])[] = [
    ['text cut off', '{"version":1,"lessons":{"01'],
    ['no object', '"hello"'],
    ['null', 'null'],
    ['no version', '{"lessons":{}}'],
    ['an older version that never was', '{"version":0,"lessons":{}}'],
    ['a version that is no whole number', '{"version":1.5,"lessons":{}}'],
    [
      'an answer of the wrong kind',
      '{"version":1,"lessons":{"a":{"predictions":{},"answers":{"q":7}}}}',
    ],
    [
      'a number of tries below one',
      '{"version":1,"lessons":{"a":{"predictions":{},"answers":{"q":{"given":"x","isRight":true,"tries":0,"at":1}}}}}',
    ],
  ];

  test('a state of a newer version is left alone while nothing is written', () => {
    const storage = fakeStorage({ [STATE_KEY]: newer });
    const { store } = tab(storage);
    expect(store.state().lessons).toEqual({});
    expect(Object.fromEntries(storage.kept)).toEqual({ [STATE_KEY]: newer });
  });

  test('a state of a newer version is kept aside, word for word, when something is written', () => {
    const storage = fakeStorage({ [STATE_KEY]: newer });
    const { store } = tab(storage);
    store.keepAnswer(LESSON, 'ratio', answer);
    expect(storage.getItem(`${ASIDE_KEY}1`)).toBe(newer);
    expect(tab(storage).store.answer(LESSON, 'ratio')).toMatchObject(answer);
  });

  test('the notice of a newer version is given once', () => {
    const { store } = tab(fakeStorage({ [STATE_KEY]: newer }));
    expect(store.takeNotice()).toBe(notices.newer);
    store.keepAnswer(LESSON, 'ratio', answer);
    expect(store.takeNotice()).toBeUndefined();
  });

  test.each(broken)('%s is kept aside and told', (_, text) => {
    const storage = fakeStorage({ [STATE_KEY]: text });
    const { store } = tab(storage);
    expect(store.takeNotice()).toBe(notices.unreadable);
    store.keepPrediction(LESSON, 'push', prediction);
    expect(storage.getItem(`${ASIDE_KEY}1`)).toBe(text);
    expect(store.prediction(LESSON, 'push')).toMatchObject(prediction);
  });

  test('two unreadable states are kept side by side, the same one only once', () => {
    const storage = fakeStorage({ [STATE_KEY]: 'first' });
    tab(storage).store.keepAnswer(LESSON, 'ratio', answer);
    storage.setItem(STATE_KEY, 'second');
    tab(storage).store.keepAnswer(LESSON, 'ratio', answer);
    storage.setItem(STATE_KEY, 'first');
    tab(storage).store.keepAnswer(LESSON, 'ratio', answer);
    const aside = [...storage.kept].filter(([key]) => key.startsWith(ASIDE_KEY));
    expect(aside.map(([, text]) => text)).toEqual(['first', 'second']);
  });

  test('with no room to keep it aside it stays where it is, and the page works in memory', () => {
    const storage = fakeStorage({ [STATE_KEY]: newer }, STATE_KEY.length + newer.length + 10);
    const { store } = tab(storage);
    store.takeNotice();
    store.keepAnswer(LESSON, 'ratio', answer);
    expect(storage.getItem(STATE_KEY)).toBe(newer);
    expect(store.answer(LESSON, 'ratio')).toMatchObject(answer);
    expect(store.takeNotice()).toBe(notices.full);
  });
});

describe('a device that keeps nothing', () => {
  test('storage that may not be touched: memory, and one line saying so', () => {
    const store = openStore({
      storage: () => {
        throw new DOMException('denied', 'SecurityError');
      },
    });
    expect(store.takeNotice()).toBe(notices.off);
    store.keepPrediction(LESSON, 'push', prediction);
    store.keepAnswer(LESSON, 'ratio', answer);
    expect(store.prediction(LESSON, 'push')).toMatchObject(prediction);
    expect(store.answer(LESSON, 'ratio')).toMatchObject(answer);
    expect(store.takeNotice()).toBeUndefined();
    expect(store.erase()).toBe(0);
    expect(store.state().lessons).toEqual({});
  });

  test('storage that is full: what was there stays, the rest lives in memory', () => {
    const storage = fakeStorage({}, 200);
    const { store } = tab(storage);
    store.keepAnswer(LESSON, 'first', answer);
    const before = storage.getItem(STATE_KEY);
    expect(before).toContain('first');
    store.keepAnswer(LESSON, 'second-with-a-long-name', answer);
    store.keepAnswer(LESSON, 'third-with-a-long-name', answer);
    expect(storage.getItem(STATE_KEY)).toBe(before);
    expect(Object.keys(store.state().lessons[LESSON]?.answers ?? {})).toHaveLength(3);
    expect(store.takeNotice()).toBe(notices.full);
    expect(store.takeNotice()).toBeUndefined();
  });
});

describe('two tabs', () => {
  test('each adds to what the other wrote, even unheard', () => {
    const storage = fakeStorage();
    const here = tab(storage).store;
    const there = tab(storage).store;
    here.keepAnswer(LESSON, 'one', answer);
    there.keepAnswer(LESSON, 'two', answer);
    expect(Object.keys(there.state().lessons[LESSON]?.answers ?? {})).toEqual(['one', 'two']);
    expect(Object.keys(tab(storage).store.state().lessons[LESSON]?.answers ?? {})).toHaveLength(2);
  });

  test('a change elsewhere is followed and told to listeners', () => {
    const storage = fakeStorage();
    const here = tab(storage);
    const listener = vi.fn();
    here.store.subscribe(listener);
    tab(storage).store.keepPrediction(LESSON, 'push', prediction);
    here.tellOfChange(STATE_KEY);
    expect(here.store.prediction(LESSON, 'push')).toMatchObject(prediction);
    expect(listener).toHaveBeenCalledOnce();
    here.tellOfChange('held-in-the-cup.theme');
    expect(listener).toHaveBeenCalledOnce();
  });

  test('everything cleared elsewhere is gone here', () => {
    const storage = fakeStorage();
    const here = tab(storage);
    here.store.keepPrediction(LESSON, 'push', prediction);
    storage.kept.clear();
    here.tellOfChange(null);
    expect(here.store.prediction(LESSON, 'push')).toBeUndefined();
  });

  test('a newer version written elsewhere is not overwritten', () => {
    const storage = fakeStorage();
    const here = tab(storage);
    const newer = JSON.stringify({ version: 9, anything: true });
    storage.setItem(STATE_KEY, newer);
    here.tellOfChange(STATE_KEY);
    expect(here.store.takeNotice()).toBe(notices.newer);
    here.store.keepAnswer(LESSON, 'ratio', answer);
    expect(storage.getItem(`${ASIDE_KEY}1`)).toBe(newer);
  });
});

test('erasing removes every entry of the course, kept-aside ones too, and nothing else', () => {
  const storage = fakeStorage({
    [STATE_KEY]: 'unreadable',
    'held-in-the-cup.theme': 'night',
    'somebody.else': 'stays',
  });
  const { store } = tab(storage);
  store.keepAnswer(LESSON, 'ratio', answer);
  expect(store.erase()).toBe(3);
  expect(Object.fromEntries(storage.kept)).toEqual({ 'somebody.else': 'stays' });
  expect(store.answer(LESSON, 'ratio')).toBeUndefined();
});
