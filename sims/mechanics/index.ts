/**
 * Mechanics of a socket under load. Pure, no DOM, imports only geometry.
 * Lengths in mm, angles in rad, forces in N, pressures and moduli in MPa. The names below are public and stable.
 */
export {
  BONE_POISSON,
  boneNames,
  boneOf,
  bones,
  boneStrength,
  boneWithModulus,
  corticalModulus,
  type Bone,
  type BoneEntry,
  type BoneName,
  type BoneNumber,
} from './bone.ts';
export { contactPressure } from './contact-pressure.ts';
export {
  elasticStabilityCurve,
  type ElasticCurveQuestion,
  type ElasticStabilityRow,
} from './contact-pressure-curve.ts';
export type {
  CarriedContact,
  ContactPressure,
  ContactQuestion,
  ContactState,
  ContactSurface,
  ForceParts,
  Patch,
  UncarriedContact,
} from './contact-pressure-types.ts';
export { pressureField, type FieldQuestion } from './contact-pressure-field.ts';
export { foundationModulus, GREATEST_POISSON, type ElasticLayer } from './foundation.ts';
export { hertzContact, type HertzContact, type HertzQuestion, type RoundPatch } from './hertz.ts';
export { leastThinLayer, type BelievedForm, type HertzDomain } from './hertz-domain.ts';
export {
  restPosition,
  type RestPosition,
  type RestQuestion,
  type RestState,
} from './rest-position.ts';
export { restUnderForce, type TiltedRest, type TiltedRestQuestion } from './version-rest.ts';
export {
  forceOnSocket,
  pullVector,
  socketAxes,
  sumOfForces,
  type ForceOnSocket,
  type Pull,
  type SocketAxes,
  type SocketTilt,
  type Vector3,
} from './version.ts';
export {
  bilayerBending,
  type BentLayer,
  type BilayerBending,
  type BilayerQuestion,
  type LayerStress,
} from './bilayer.ts';
export { bimetalCurvature, type BimetalQuestion } from './bimetal.ts';
export { dundurs, type Dundurs, type ElasticMaterial } from './dundurs.ts';
export { ingrowth, usualIngrowthRates, usualMotionThresholds } from './ingrowth.ts';
export type {
  BoneAnswer,
  Ingrowth,
  IngrowthPlace,
  IngrowthQuestion,
  IngrowthRates,
  IngrowthWeek,
  MotionThresholds,
} from './ingrowth-types.ts';
export { shearLag, type Adherend, type ShearLag, type ShearLagQuestion } from './shear-lag.ts';
export { materials } from './materials.ts';
export type { Material, MaterialName, Quantity, WayRead } from './materials-types.ts';
export type { LettingGo } from './growing-load.ts';
export { keel, type Keel } from './seat-keel.ts';
export { peg, type Peg, type SurroundingBone } from './seat-peg.ts';
export { flatBed, sphericalBed, type Bed } from './seat-bed.ts';
export { holds, type Hold, type HoldKind } from './seat-kinds.ts';
export type { SeatOutline } from './seat-outline.ts';
export {
  rockingTest,
  type RockingCycle,
  type RockingQuestion,
  type RockingResult,
} from './rocking-test.ts';
export { seatMemory, type Fading, type SeatMemory } from './seat-memory.ts';
export { solveSeat } from './seat.ts';
export type {
  SeatElement,
  SeatElementAnswer,
  SeatElementState,
  SeatLoad,
  SeatOutcome,
  SeatQuestion,
  SeatSolution,
  Tension,
} from './seat-types.ts';
export { cementHeat, type CementHeat, type CementHeatQuestion } from './cement-heat.ts';
export type { ThermalProperties } from './cement-heat.ts';
export {
  arrheniusDamage,
  BONE_HEAT_LIMIT,
  cem43,
  heatInjury,
  henriques,
  SKIN_BURN_LIMIT,
  timeAbove,
  type ArrheniusConstants,
  type HeatInjury,
  type TemperatureHistory,
} from './cement-injury.ts';
export { settingRate, shareSet, USUAL_EXPONENT, type CementKinetics } from './cement-setting.ts';
export { cementVolume } from './cement-volume.ts';
export type {
  CementDesign,
  CementedKeel,
  CementedPeg,
  CementVolume,
  MantleVolume,
} from './cement-volume-types.ts';
export { conduct } from './conduct.ts';
export type {
  ConductBoundary,
  ConductLayer,
  Conduction,
  ConductQuestion,
  FaceHistory,
  HeatLedger,
  HeatSource,
} from './conduct-types.ts';
