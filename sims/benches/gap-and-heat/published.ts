/** A number from print, laid over what the bench computes. Whoever shows the bench hands it in. */
export interface Published {
  /** What was measured, in a few words */
  readonly label: string;
  readonly value: number;
  readonly low: number;
  readonly high: number;
  /** Short reference, and how it was read */
  readonly source: string;
}

export interface PublishedHeat {
  /** Cement put into sockets, g */
  readonly weight: Published;
  /** Highest temperatures of bone, °C */
  readonly peaks: readonly Published[];
}
