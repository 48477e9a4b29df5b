import Build from './Build.astro';
import Drawing from './Drawing.astro';
import Notes from './Notes.astro';
import Stage from './Stage.astro';
import StageStandIn from './StageStandIn.astro';
import Step from './Step.astro';
import Vote from './Vote.astro';
import VoteRule from './VoteRule.astro';

/** What a `lecture.mdx` may use without importing it, in the window the room sees. */
export const stageParts = { Step, Notes, Build, Drawing, Vote, VoteRule, Stage };

/** The same for the speaker's window, where no bench runs a second time. */
export const speakerParts = { ...stageParts, Stage: StageStandIn };
