import { prepare } from './prepare.mjs';
import { fail } from './project.mjs';
import { runTool } from './run.mjs';

/** From a bare clone to a running site: install, build, serve. */
try {
  await prepare();
  console.log('Building the site.');
  const code = await runTool('astro', ['build', '--silent']);
  if (code !== 0) throw new Error('The site did not build; what went wrong is above.');
  // Loaded only now: it needs the installed packages.
  const { serveUntilEnded } = await import('./serve.mjs');
  await serveUntilEnded();
} catch (error) {
  fail(error);
}
