/** How a number was come by. The first are ways to read a source, as in lessons/sources.json. */
export type WayRead = 'read' | 'abstract' | 'excerpt' | 'quoted' | 'from memory' | 'teaching value';

/** A number with where it comes from. `value`, `low` and `high` are in `unit`. */
export interface Quantity {
  /** What the course computes with. */
  readonly value: number;
  /** How far print spreads; left out where one source gives one number. */
  readonly low?: number | undefined;
  readonly high?: number | undefined;
  readonly unit: 'MPa' | 'W/(mm·K)' | 'J/(mm³·K)' | '';
  /** Ids in lessons/sources.json, that of `value` first; none for a teaching value without a range. */
  readonly sources: readonly string[];
  /** How `value` was come by. A teaching value may lie in a range that was read. */
  readonly howRead: WayRead;
  readonly note?: string | undefined;
}

export type MaterialName =
  | 'polyethylene'
  | 'bone cement'
  | 'cobalt-chromium'
  | 'titanium alloy'
  | 'cancellous bone'
  | 'cortical bone';

/** A material as the course computes with it: linear, elastic, the same in every direction. */
export interface Material {
  /** The trade’s full name for it. */
  readonly what: string;
  /** Young’s modulus E, MPa */
  readonly youngsModulus: Quantity;
  /** Poisson’s ratio ν */
  readonly poissonRatio: Quantity;
  /** Stress at which it begins to stay deformed when pulled, MPa; left out where nothing was read */
  readonly yieldStrength?: Quantity | undefined;
  /** Greatest stress it bears when pulled, MPa */
  readonly tensileStrength: Quantity;
  /** Greatest stress it bears when pressed, MPa; left out where nothing was read */
  readonly compressiveStrength?: Quantity | undefined;
  /** k, W/(mm·K) */
  readonly conductivity: Quantity;
  /** ρc, J/(mm³·K) */
  readonly volumetricHeat: Quantity;
}
