import { roseOf, type RoseQuestion } from './rose.ts';

/** Runs in a thread of its own: a question comes in, its rose goes out. */
addEventListener('message', ({ data }: MessageEvent<RoseQuestion>) => {
  postMessage(roseOf(data));
});
