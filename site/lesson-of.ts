/**
 * The lesson whose page is being built, from its address.
 *
 * @param page Astro's own object in the component that asks
 * @param component its name, for the message
 * @throws Error on a page that belongs to no lesson
 */
export function lessonOf(
  page: { readonly params: Readonly<Record<string, string | undefined>> },
  component: string,
): string {
  const { lesson } = page.params;
  if (lesson === undefined) throw new Error(`${component} stands on a page that is no lesson`);
  return lesson;
}
