/** What runs only while it can be seen. */
export interface Sleeper {
  wake?(): void;
  sleep(): void;
}

/** Wakes it when an element comes into sight and lets it sleep when it goes out, and at the end. Returns what ends it. */
export function awakeInSight(element: Element | null, sleeper: Sleeper): () => void {
  const watch = new IntersectionObserver((entries) => {
    if (entries.at(-1)?.isIntersecting === true) sleeper.wake?.();
    else sleeper.sleep();
  });
  if (element !== null) watch.observe(element);
  return () => {
    watch.disconnect();
    sleeper.sleep();
  };
}
