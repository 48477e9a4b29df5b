/**
 * Heat that a layer gives off, W/mm³: steady, or as a function of time (s). Below 0 it takes heat up. What a function gives
 * has to be finite.
 */
export type HeatSource = number | ((time: number) => number);

/** A layer of one material, the same all through. */
export interface ConductLayer {
  /** mm, above 0 */
  readonly thickness: number;
  /** W/(mm·K), above 0 */
  readonly conductivity: number;
  /** Heat that warms a volume by one degree, density times specific heat, J/(mm³·K), above 0 */
  readonly volumetricHeat: number;
  /** °C or K, the same in the whole question */
  readonly initialTemperature: number;
  readonly source?: HeatSource | undefined;
}

/**
 * What an end is joined to: something that keeps its temperature, nothing that takes heat, or air or water of a temperature
 * through a film, W/(mm²·K), 0 and up.
 */
export type ConductBoundary =
  | { readonly temperature: number }
  | { readonly insulated: true }
  | { readonly film: number; readonly ambient: number };

export interface ConductQuestion {
  /** From left to right, at least one */
  readonly layers: readonly ConductLayer[];
  readonly boundary: { readonly left: ConductBoundary; readonly right: ConductBoundary };
  /** s, above 0 */
  readonly duration: number;
  /** Greatest thickness of a cell, mm, above 0. Each layer is cut into equal cells of its own. */
  readonly cell: number;
  /** Greatest step in time, s, above 0. The duration is cut into equal steps. */
  readonly step: number;
  /**
   * Left out: flat layers. Given: the layers are shells round an axis and the first begins at this radius, mm, 0 and up;
   * at 0 there is no left end.
   */
  readonly innerRadius?: number | undefined;
}

/** Temperatures of a face through time: an end, or where two layers touch. */
export interface FaceHistory {
  /** From the left end, mm */
  readonly depth: number;
  /** One for each time */
  readonly temperatures: Float64Array;
}

/** Where the heat came from and went to by the end, J for each mm² of layer; for shells J for each mm of length. */
export interface HeatLedger {
  /** Given off by the sources */
  readonly released: number;
  /** Come in through the ends; below 0 where it left */
  readonly entered: { readonly left: number; readonly right: number };
  /** Held in the warmth of the layers beyond what they began with */
  readonly stored: number;
}

export interface Conduction {
  /** Middles of the cells from the left end, mm */
  readonly depths: Float64Array;
  /** From 0 to the duration, s */
  readonly times: Float64Array;
  /** One row for each time, in it one temperature for each depth */
  readonly temperatures: readonly Float64Array[];
  /** Left end, where layers touch, right end */
  readonly faces: readonly FaceHistory[];
  readonly heat: HeatLedger;
}
