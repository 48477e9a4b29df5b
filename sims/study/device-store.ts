import { openStore, type StudyStore } from '../shared/store.ts';

let store: StudyStore | undefined;

/** The one store of this page, opened at the first call. For handlers and effects only: a server has no device. */
export function deviceStore(): StudyStore {
  store ??= openStore({ storage: () => window.localStorage, events: window });
  return store;
}
