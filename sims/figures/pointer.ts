/** What a pointer can do with something that may be taken hold of. */
export interface Grip {
  readonly take: (event: PointerEvent) => void;
  readonly move: (event: PointerEvent) => void;
  readonly letGo: (event: PointerEvent) => void;
  /** The touch turned out to scroll the page. */
  readonly putBack: (event: PointerEvent) => void;
}

/** Listens to a pointer on an element. Returns what ends it. */
export function listenToPointer(
  place: GlobalEventHandlers,
  { take, move, letGo, putBack }: Grip,
): () => void {
  const end = new AbortController();
  const { signal } = end;
  place.addEventListener('pointerdown', take, { signal });
  place.addEventListener('pointermove', move, { signal });
  place.addEventListener('pointerup', letGo, { signal });
  place.addEventListener('pointercancel', putBack, { signal });
  return () => end.abort();
}
