import { readdirSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import { builtSite } from '../../../site/scripts/project.mjs';

/** Routes of every page of the built site, below its top: '', 'study/01-ball-and-cup/', '404.html'. */
export function builtRoutes(): readonly string[] {
  const folder = builtSite();
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && entry.name.endsWith('.html'))
    .map((entry) => relative(folder, join(entry.parentPath, entry.name)).split(sep).join('/'))
    .map((file) => file.replace(/index\.html$/, ''))
    .sort();
}

/** Routes of the lessons that an edition has: 'clinic/01-ball-and-cup/' and so on. */
export function lessonRoutes(edition: 'study' | 'lecture' | 'clinic'): readonly string[] {
  const lesson = new RegExp(`^${edition}/\\d\\d-[^/]+/$`);
  return builtRoutes().filter((route) => lesson.test(route));
}
