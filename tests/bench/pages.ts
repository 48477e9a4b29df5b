import { pageSpeeds } from './page-speed.ts';
import { pageWeights } from './page-weight.ts';

/** What the pages weigh and how fast they are, as tables. */
export async function pagesBench(): Promise<string> {
  return pageWeights() + (await pageSpeeds());
}
