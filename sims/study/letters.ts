/** The letter of the option in this place: A, B, C, D. */
export function letterOf(place: number): string {
  return String.fromCodePoint(65 + place);
}
