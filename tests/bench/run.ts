import { cpus, loadavg } from 'node:os';
import { cementBench } from './cement.ts';
import { contactPressureBench } from './contact-pressure.ts';
import { directionMapBench } from './direction-map.ts';
import { pagesBench } from './pages.ts';
import { physicsBench } from './physics.ts';
import { seatBench } from './seat.ts';

/** `npm run bench [physics|map|contact|seat|cement|pages]`: all tables, or one. Needs a built site for the pages. */
const benches = {
  physics: physicsBench,
  map: directionMapBench,
  contact: contactPressureBench,
  seat: seatBench,
  cement: cementBench,
  pages: pagesBench,
};
const named = process.argv.slice(2);

console.log(`Node ${process.version}, ${cpus().length} × ${cpus()[0]?.model ?? 'processor'}`);
const busy = (loadavg()[0] ?? 0) / cpus().length;
if (busy > 0.5) {
  console.log(
    `The machine is busy with other work (${busy.toFixed(1)} a core): times below are too long.`,
  );
}
for (const [name, bench] of Object.entries(benches)) {
  if (named.length === 0 || named.includes(name)) console.log(await bench());
}
