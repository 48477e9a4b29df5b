import { prepare } from './prepare.mjs';
import { runTool } from './run.mjs';

/** `astro.mjs build`, `astro.mjs dev`: Astro on the current Node, packages installed first where they are not. */
await prepare();
process.exit(await runTool('astro', process.argv.slice(2)));
