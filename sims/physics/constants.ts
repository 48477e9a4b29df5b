/** Every step, stiffness, tolerance and limit of the physics scenes. Lengths mm, times s, angles rad. */

// Time

/** One fixed step, s: what `step()` advances. */
export const STEP_SECONDS = 1 / 120;

/** Engine updates inside one fixed step. At half as many, a ball of 0.3 mm mismatch rattles between two facets. */
export const UPDATES_PER_STEP = 8;

/** One engine update, s. */
export const UPDATE_SECONDS = STEP_SECONDS / UPDATES_PER_STEP;

/** The most time one call of `advance` makes up for, s: a page hidden for an hour comes back where it was. */
export const LONGEST_ADVANCE = 0.25;

/** Slack in counting whole steps, as a part of a step: thirty frames of 1/60 s are sixty steps in spite of rounding. */
export const STEP_COUNT_SLACK = 1e-6;

// Inertia

/**
 * Acceleration A that the compressive load alone would give the free ball, mm/s². The ball's mass is the load divided by
 * this, so that every load runs at the same pace. Inertia has no part in a slow push; this sets how fast the ball answers
 * and how little the push must accelerate it. A deep cup hardly wider than the ball gets less, within these bounds.
 */
export const MOST_LOAD_ACCELERATION = 16_000;
export const LEAST_LOAD_ACCELERATION = 8000;

/** The ball swings on the steepest facet through this much of a radian in one update at the most. */
export const MOST_SWING = 0.5;

/** Damping of free motion is four times the ball's own frequency in the hollow, within these bounds, 1/s. */
export const LEAST_DAMPING = 20;
export const MOST_DAMPING = 120;

/** A ball slower than this, mm/s, counts as at rest. */
export const REST_SPEED = 0.05;

// Side force

/** Side force is never more than this many times the compressive load; a push that reaches it ends as "held". */
export const LARGEST_RATIO = 20;

/** Time in which a newly set side force comes on, s: applied at a blow, it would throw the ball over a rim that holds it. */
export const FORCE_RISE_SECONDS = 0.3;

/** Stiffness of the spring that drags or pushes the ball, compressive loads per mm; stiffer than any rim is steep. */
export const SPRING_STIFFNESS = 2;

/** Damping of that spring, as a part of the critical. */
export const SPRING_DAMPING_RATIO = 0.7;

/** Time in which the spring's far end follows a pointer, s, and its greatest speed, mm/s: a pointer comes in jumps. */
export const DRAG_LAG = 0.04;
export const DRAG_SPEED = 60;

// The slow push

/** Time constant of the averages taken during a push, s. */
export const AVERAGING_SECONDS = 0.01;

/** While the ball stands still the ratio rises at first by the scale in this time, s … */
export const RISE_SECONDS = 3.2;

/** … and twice as fast at this many scales, so that a push at a ball that cannot slip comes to its end. */
export const RISE_DOUBLES_AT = 1.5;

/** Time to cross half the socket at top speed, s. */
export const CROSSING_SECONDS = 3;

/** Share of the scale of the ratio that speeding up the ball may take. */
export const INERTIAL_SHARE = 0.0015;

/** Smallest scale of the ratio a push is paced by: a flat, frictionless socket still takes its time. */
export const LEAST_SCALE = 0.05;

/** A push has passed its peak when the ratio has been lower by this share of the peak, and this share of the scale … */
export const FALL_SHARE = 0.1;
export const FALL_OF_SCALE = 0.03;

/** … for this long, s, with the ball this much further out, mm. */
export const FALL_SECONDS = 0.03;
export const FALL_TRAVEL = 0.05;

// Shapes

/** Widest facet of the hollow, rad: a coarser one would look wrong in a drawing. */
export const WIDEST_FACET = Math.PI / 45;

/** Widest facet as the ball's centre sees it, mm: the ball comes to rest between two facets, so this limits where. */
export const LONGEST_FACET_OF_CENTRE = 0.1;

export const FEWEST_FACETS = 12;
export const MOST_FACETS = 128;

/** Spacing of the corners of the ball's outline where it can touch the socket, and elsewhere, rad. */
export const FINE_OUTLINE = Math.PI / 180;
export const COARSE_OUTLINE = Math.PI / 12;

/** Thickness of the socket below its deepest point, and how far outside the rim the ball's centre may go, ball radii. */
export const THICKNESS = 0.5;
export const REACH = 0.75;

// Contact

/**
 * Penetration the engine leaves at a contact, mm: this share of the mismatch, or this length, times the square of the
 * angle between facets. It stays far below the depth of a corner between facets, mismatch × angle² / 8, beyond which
 * the ball would feel a facet it has not come to. The ball is drawn larger by as much, so it stands at its true height.
 */
export const SLOP_OF_MISMATCH = 1 / 50;
export const SLOP_LENGTH = 0.04;
export const LEAST_SLOP = 1e-7;
export const MOST_SLOP = 3e-4;

/** A contact that bears less than this share of the hardest pressed one is not worth reading. */
export const LEAST_CONTACT_SHARE = 1e-6;

/** Rounds in which friction and normal forces agree where several facets bear at once, and sweeps in each. */
export const CONTACT_ROUNDS = 4;
export const CONTACT_SWEEPS = 8;
