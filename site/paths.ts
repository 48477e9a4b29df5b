/** An address inside the course, under whatever path the course is published; always with its closing slash. */
export function to(path: string): string {
  const base = import.meta.env.BASE_URL.replace(/\/$/, '');
  return `${base}/${path.replace(/^\//, '')}`;
}

/** "01-ball-and-cup" → 1 */
export function lessonNumber(id: string): number {
  return Number.parseInt(id, 10);
}
